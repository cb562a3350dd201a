import { referReasons, type ReferReason } from '../rig/index.ts';
import { stageOfHoldPoint, stagesOf } from '../procedure/index.ts';
import { headings, type Scenario } from '../scenario/index.ts';
import type { Tried } from './tryHands.ts';
import type { HandResult, Note, NoteId } from './types.ts';

const note = (
  field: string,
  id: NoteId,
  grave: boolean,
  numbers: Note['numbers'] = {},
  about: string | null = null,
): Note => ({ field, id, grave, numbers, about });

/** Where in the document the cause of a steady crew's stop is to be looked for. */
const fieldOf: Readonly<Record<ReferReason, string>> = {
  pressureAboveRating: 'job.system.mainPressureGaugePa',
  outOfRange: 'job.system.orderPressureGaugePa',
  bossBeyondUse: 'job.workpiece.boss',
  wallUnsound: 'job.workpiece.wallSound',
  suspectWrap: 'job.workpiece.wrap',
  wrongService: 'workOrder',
  plugSeized: 'job.workpiece.plugBreakNm',
  proofFails: 'job.kit',
  stopFails: 'job.kit',
  valvePassing: 'job.kit',
  gasInHole: 'job.site',
  weldLeaks: 'job.workpiece',
  threadWorn: 'job.workpiece',
  teeSeized: 'job.workpiece.teeBreakNm',
  strayVolts: 'job.site',
  insertFound: 'job.system.service',
  liquidInMain: 'job.system',
  mainMoves: 'job.system.main',
  kitUnfit: 'job.kit',
  siteUnsafe: 'job.site',
  other: 'job.kit',
};

function fieldFor(reason: string): string {
  const known = referReasons.find((one) => one === reason);
  return known === undefined ? 'job' : fieldOf[known];
}

/** Whether a steady crew reaches the ending asked for and passes; else why not, at the field that keeps it from it. */
export function finishableNotes(scenario: Scenario, { run, assessment }: Tried): readonly Note[] {
  if (assessment.verdict === 'pass') return [];
  const ended = run.rig.ending;
  if (assessment.ending !== scenario.intendedEnding) {
    return ended?.kind === 'referred'
      ? [note(fieldFor(ended.reason), 'stopsForReason', true, { atS: run.clockS }, ended.reason)]
      : [note('intendedEnding', 'endsOtherwise', true, { atS: run.clockS }, assessment.ending)];
  }
  const worst = assessment.findings.find((finding) => finding.critical) ?? assessment.findings[0];
  return assessment.score < scenario.cutScore
    ? [note('cutScore', 'cutAboveSteady', true, { score: assessment.score, cutScore: scenario.cutScore })]
    : [note('job', 'failsSteady', true, { atS: worst?.atS ?? run.clockS }, worst?.id ?? null)];
}

/** Points a crew loses that did all that is asked: something it could not have known or done better costs it. */
export function goodWorkNotes({ assessment }: Tried): readonly Note[] {
  if (assessment.verdict !== 'pass') return [];
  return assessment.findings
    .filter((finding) => finding.points > 0 && finding.id !== 'holdNotReached')
    .map((finding) =>
      note('job', 'goodWorkCosts', false, { points: finding.points, atS: finding.atS }, finding.id),
    );
}

/** A heading that outweighs all others together decides the run alone. */
const HEADING_MOST = 60;
/** Points on abnormal conditions that everybody gets, since there are none. */
const IDLE_ABNORMAL = 20;
/** Share of its heading past which one hold point decides it. */
const HOLD_POINT_MOST = 1 / 3;

export function weightNotes(scenario: Scenario, abnormal: number): readonly Note[] {
  const { weights, holdPoints } = scenario;
  const sum = headings.reduce((total, heading) => total + weights[heading], 0);
  const all = holdPoints.reduce((total, hold) => total + hold.weight, 0);
  return [
    ...(Math.abs(sum - 100) > 1e-9 ? [note('weights', 'weightsAddUp', true, { sum })] : []),
    ...headings
      .filter((heading) => weights[heading] > HEADING_MOST)
      .map((heading) =>
        note(`weights.${heading}`, 'headingHeavy', false, { points: weights[heading] }, heading),
      ),
    ...(abnormal === 0 && weights.abnormal > IDLE_ABNORMAL
      ? [note('weights.abnormal', 'weightWithoutCause', false, { points: weights.abnormal }, 'abnormal')]
      : []),
    ...holdPoints.flatMap((hold, i) =>
      all > 0 && hold.weight / all > HOLD_POINT_MOST
        ? [note(`holdPoints.${i}.weight`, 'holdPointHeavy', false, { share: hold.weight / all }, hold.id)]
        : [],
    ),
  ];
}

/** Hold points that a steady crew never comes to, or that guard this work and are not in the list. */
export function holdPointNotes(scenario: Scenario, { assessment }: Tried): readonly Note[] {
  if (assessment.ending !== 'complete') return [];
  const listed = new Set<string>(scenario.holdPoints.map((hold) => hold.id));
  const own = stagesOf(scenario.job);
  const due = CRITICAL.filter((id) => own.includes(stageOfHoldPoint[id]));
  const critical = scenario.kind === 'drill' ? [] : due.filter((id) => !listed.has(id));
  return [
    ...assessment.holdPoints
      .filter((hold) => hold.outcome === 'notReached')
      .map((hold) => note('holdPoints', 'holdPointNotReached', false, {}, hold.id)),
    ...critical.map((id) => note('holdPoints', 'holdPointLeftOut', false, {}, id)),
  ];
}

/** Hold points whose failure lets gas blow; of them a renewal has R1 to R6 in place of H11. */
const CRITICAL = [
  'H1', 'H2', 'H4', 'H6', 'H7', 'H9', 'H11', 'R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'H12',
] as const; // prettier-ignore

/** A time limit leaves an unhurried crew a fifth to spare. */
const SPARE_SHARE = 1.2;

export function limitNotes(scenario: Scenario, hands: Readonly<Record<string, HandResult>>): readonly Note[] {
  const { timeLimitS, cutScore } = scenario;
  const steadyS = hands.steady.simulatedS;
  const short = timeLimitS !== null && timeLimitS < SPARE_SHARE * steadyS;
  return [
    ...(short ? [note('timeLimitS', 'timeShort', true, { timeLimitS, steadyS })] : []),
    ...Object.entries(hands).flatMap(([name, { verdict, score }]) => {
      if (name === 'steady') return [];
      if (verdict === 'pass') return [note('cutScore', 'handPasses', false, { score, cutScore }, name)];
      return verdict === 'fail' && score >= cutScore
        ? [note('cutScore', 'cutBelowHasty', false, { score, cutScore }, name)]
        : [];
    }),
  ];
}
