import type { FaultId, Trigger, TriggerCondition } from '../../src/core/faults/index.ts';
import type {
  Action,
  CleanPlace,
  KitKind,
  LookPlace,
  ReferReason,
  SiteTask,
} from '../../src/core/rig/index.ts';
import { signs, steadyRun, without, type Matches, type Step } from '../judge/play.ts';

/** How a fault is met in the tests: the model work up to a point, the checks that show it, the answer, and the neglect. */
export interface Row {
  /** The model's work is played up to the first action that matches, leaving that out. */
  readonly upTo: Matches;
  readonly when: Trigger;
  /** What a crew then does to find it, beyond the model work. */
  readonly checks: readonly Action[];
  /** The right answer; null where the fault sits on a piece, which is set aside. */
  readonly answer: readonly Action[] | null;
  /** How a crew comes to ignore it: a change of the model work. */
  readonly ignore: (steps: readonly Step[]) => readonly Step[];
}

const start: Trigger = { trigger: 'start' };
const at = (condition: TriggerCondition): Trigger => ({ trigger: 'condition', condition });
const look = (place: LookPlace): Action => ({ kind: 'look', at: place });
const doing = (task: SiteTask): Action => ({ kind: 'site.do', task });
const refer = (reason: ReferReason): Action => ({ kind: 'refer', reason });
const clean = (place: CleanPlace): Action => ({ kind: 'clean', at: place });
const asIs = (steps: readonly Step[]): readonly Step[] => steps;
const places =
  (kind: KitKind): Matches =>
  (a) =>
    a.kind === 'piece.place' && a.piece.startsWith(kind);
const loads = (kind: KitKind): Matches => (a) => a.kind === 'rod.load' && a.piece !== null && a.piece.startsWith(kind); // prettier-ignore
const leavingOut = (task: SiteTask): Row['ignore'] => without((a) => a.kind === 'site.do' && a.task === task);
const notLooking = (place: LookPlace): Row['ignore'] => without((a) => a.kind === 'look' && a.at === place);

/** The first of the model's actions after a fact of that kind. */
const after = (fact: string): Matches => {
  const atS = steadyRun().run.facts.find((f) => f.fact === fact)?.atS ?? 0;
  const index = steadyRun().entries.findIndex((entry) => entry.atS > atS);
  return (_action, i) => i === index;
};
/** The action after the first look down the bore: the valve stands open under the sight cap. */
const bored: Matches = (_a, i) => {
  const index = steadyRun().entries.findIndex(
    ({ action }) => action.kind === 'look' && action.at === 'downBore',
  );
  return i === index + 1;
};

/** Found while setting up, and answered there and then. */
const usual: Row = { upTo: signs('H1'), when: start, checks: [], answer: null, ignore: asIs };
const row = (change: Partial<Row>): Row => ({ ...usual, ...change });

/** What is not as usual, fault by fault. */
const rows: Readonly<Partial<Record<FaultId, Row>>> = {
  bossPitted: row({ checks: [clean('boss'), look('boss')], answer: [refer('proofFails')], ignore: notLooking('boss') }), // prettier-ignore
  bossBeyondUse: row({ answer: [refer('bossBeyondUse')] }),
  scaleUnderChain: row({ answer: [clean('pipe')], ignore: (steps) => without((a) => a.kind === 'clean' && a.at === 'pipe')(notLooking('wall')(steps)) }), // prettier-ignore
  weldBeadUnderGasket: row({ upTo: places('cupGasket'), checks: [look('gasketSeat')], answer: [clean('weldBead')], ignore: notLooking('gasketSeat') }), // prettier-ignore
  boreScale: row({ upTo: bored, answer: [clean('bore')] }),
  plugPassing: row({ upTo: signs('H2'), answer: [refer('proofFails')] }),
  plugSeized: row({ upTo: places('saddle'), answer: [refer('plugSeized')] }),
  plugRounded: row({ upTo: places('saddle'), answer: [refer('plugSeized')] }),
  teeSeized: row({ upTo: places('cupGasket'), answer: [refer('teeSeized')] }),
  weldLeaks: row({ upTo: places('cupGasket'), answer: [refer('weldLeaks')] }),
  weldWeepsAfterBite: row({ upTo: places('cupGasket'), answer: [refer('weldLeaks')] }),
  couplingThreadWorn: row({ upTo: loads('closingPlug'), answer: [refer('threadWorn')] }),
  curbPassing: row({ answer: [doing('openMeterStop')] }),
  farFeed: row({ answer: [refer('stopFails')] }),
  unknownBranch: row({ upTo: signs('H4'), answer: [doing('callGasControl')] }),
  secondHouse: row({ answer: [doing('callGasControl')] }),
  excessFlowDevice: row({ upTo: signs('H4'), answer: [doing('openMeterStop')] }),
  insertInService: row({ upTo: signs('H7'), answer: [refer('insertFound')] }),
  mainOutOfRound: row({ answer: [refer('outOfRange')], ignore: notLooking('wall') }),
  thinWall: row({ answer: [refer('wallUnsound')] }),
  suspectWrap: row({ answer: [refer('suspectWrap')] }),
  wrongService: row({ answer: [refer('wrongService')] }),

  pressureAboveTag: row({ answer: [refer('outOfRange')] }),
  pressureAboveRating: row({ answer: [refer('pressureAboveRating')] }),
  regulatorCreep: row({ upTo: signs('H10'), when: at('boreStopped'), answer: [doing('callGasControl')] }),
  mainRisesAfterStop: row({ upTo: signs('H10'), when: at('boreStopped'), answer: [doing('callGasControl')] }),
  mainFalling: row({ upTo: signs('H10'), when: at('boreStopped'), answer: [doing('callGasControl')] }),
  temperatureDrift: row({ upTo: signs('H2'), when: at('headAtMain'), checks: [look('around')], answer: [refer('proofFails')], ignore: notLooking('around') }), // prettier-ignore
  odourAbsent: row({ upTo: signs('H4'), answer: [doing('callGasControl')] }),
  liquidFromBleed: row({ upTo: signs('H4'), answer: [doing('callGasControl')] }),

  otherLeak: row({ answer: [doing('ventilate')] }),
  stillAir: row({ checks: [look('around')], answer: [doing('ventilate')] }),
  ignitionSource: row({ answer: [], ignore: leavingOut('ignitionCleared') }),
  ignitionArrives: row({ upTo: signs('H4'), when: at('plugFree'), checks: [look('around')], answer: [doing('ignitionCleared')] }), // prettier-ignore
  publicApproaches: row({ upTo: signs('H4'), when: at('plugFree'), checks: [look('around')], answer: [doing('clearPublic')] }), // prettier-ignore
  waterInHole: row({ checks: [look('around')], answer: [doing('pumpOutWater')] }),
  coldRubber: row({ checks: [look('around')], answer: [refer('stopFails')], ignore: notLooking('around') }),
  strayVolts: row({ upTo: signs('H7'), answer: [refer('strayVolts')] }),
  pipeSprings: row({ upTo: signs('H7'), answer: [], ignore: leavingOut('supportPipe') }),
  workerDown: row({ upTo: after('plug.free'), when: at('plugFree'), checks: [look('around')], answer: [doing('retrieveByLine')] }), // prettier-ignore

  gaugeUnfit: row({ answer: [doing('changeGauge')] }),
  detectorFailsBump: row({ answer: [doing('changeDetector')] }),
  detectorReadsLow: row({ answer: [doing('changeDetector')] }),
  hoseKinked: row({ upTo: after('plug.free'), when: at('plugFree'), checks: [look('hose')], answer: [{ kind: 'hose.lead', outlet: 'away' }] }), // prettier-ignore
  hoseDrifts: row({ upTo: after('plug.free'), when: at('plugFree'), checks: [look('hose')], answer: [{ kind: 'hose.lead', outlet: 'away' }] }), // prettier-ignore
  looseJoint: row({ upTo: signs('H2'), when: at('headAtMain'), answer: [refer('proofFails')] }),
  gasketBlows: row({ upTo: after('tee.free'), when: at('teeFree'), checks: [look('chains')], answer: [{ kind: 'leaveHole' }], ignore: without(loads('closingPlug')) }), // prettier-ignore
};

export function rowOf(id: FaultId): Row {
  return rows[id] ?? usual;
}
