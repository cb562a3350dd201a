import { faultIds, type FaultId } from '../faults/index.ts';
import type { Heading } from '../scenario/index.ts';

/** How grave: `critical` fails the run whatever the points; the others only cost. */
export type Severity = 'critical' | 'major' | 'minor';

interface FindingKind {
  readonly heading: Heading;
  readonly severity: Severity;
}

const holdPoints = (severity: Severity) => ({ heading: 'holdPoints', severity }) as const;
const gas = (severity: Severity) => ({ heading: 'gasControl', severity }) as const;
const technique = (severity: Severity) => ({ heading: 'technique', severity }) as const;
const kit = (severity: Severity) => ({ heading: 'kit', severity }) as const;
const abnormal = (severity: Severity) => ({ heading: 'abnormal', severity }) as const;

/** Everything the judge can find, with the heading it counts under. Severity is the most it can be. */
export const findingIds = {
  holdMissed: holdPoints('critical'),
  holdFalse: holdPoints('critical'),
  /** Signed on good evidence that had lapsed or been undone before the guarded work began. */
  holdVoided: holdPoints('critical'),
  holdNotReached: holdPoints('major'),

  gasToHole: gas('major'),
  largePuff: gas('major'),
  lowAlarm: gas('major'),
  highAlarm: gas('major'),
  flammableHole: gas('major'),
  flammableAtSource: gas('critical'),
  gasIgnited: gas('critical'),
  airIntoMain: gas('minor'),
  bledIntoHole: gas('major'),
  openedUnderPressure: gas('critical'),
  plugOutOpen: gas('critical'),
  teeOutOpen: gas('critical'),

  tensionUneven: technique('major'),
  notTapped: technique('minor'),
  chainOverloaded: technique('minor'),
  chainLetGo: technique('critical'),
  plugNotCracked: technique('minor'),
  plugNotSnugged: technique('minor'),
  plugNotMarked: technique('minor'),
  noHoldBack: technique('major'),
  wrongJointTurned: technique('major'),
  valveNotWorked: technique('minor'),
  valveOpenedQuickly: technique('minor'),
  valveOpenedBleedOpen: technique('minor'),
  rodNotHeld: technique('major'),
  rodThrown: technique('critical'),
  thrown: technique('critical'),
  newJointUnchecked: technique('minor'),
  noCrackCheck: technique('minor'),
  overPumped: technique('major'),
  reliefLifted: technique('major'),
  stopperTorque: technique('major'),
  stopperTorn: technique('major'),
  stopperDepth: technique('major'),
  stopperSlipped: technique('major'),
  stopperLost: technique('critical'),
  testAirOnStopper: technique('critical'),
  drawnUnequalised: technique('critical'),
  airLeftInLine: technique('critical'),
  depthNotMeasured: technique('minor'),
  cutStopUnproved: technique('critical'),
  pipeUnsupported: technique('minor'),
  edgesNotFiled: technique('minor'),
  teeNotSnugged: technique('minor'),
  couplingUnchecked: technique('minor'),
  boltsUneven: technique('minor'),
  valveNotCapped: technique('minor'),
  threadNotFound: technique('minor'),
  facesNotCleaned: technique('minor'),
  stoppedUnsafe: technique('critical'),
  completedUndone: technique('critical'),
  coachAsked: technique('minor'),

  wrongSize: kit('major'),
  unfitUsed: kit('major'),
  usedUninspected: kit('minor'),
  noCradleBlocks: kit('major'),
  noSealant: kit('major'),
  sealantOnRubber: kit('minor'),

  wentOnAboveRating: abnormal('critical'),
  wentOnBossBeyondUse: abnormal('critical'),
  abnormalNotNoticed: abnormal('major'),
  abnormalWrongReaction: abnormal('major'),
  workedInAlarm: abnormal('major'),
  needlessStop: abnormal('major'),
} as const satisfies Readonly<Record<string, FindingKind>>;

export type FindingId = keyof typeof findingIds;

/** Real abnormal conditions a job can hold are the faults, planted or not. A finding names them in `items`. */
export const abnormalConditionIds = faultIds;
export type AbnormalConditionId = FaultId;
