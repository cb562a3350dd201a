import type { ReferReason } from '../rig/index.ts';
import { evidence, latest } from '../procedure/index.ts';
import type { Case } from './case.ts';
import { conditionsIn } from './conditions.ts';
import type { Assessment } from './types.ts';

/** Torque from which an old plug is left alone and referred back, N·m (assumed, as the handbook's range). */
export const SEIZED_NM = 300;

/** How the run ended. */
export function endingOf(judged: Case): Assessment['ending'] {
  return judged.run.rig.ending?.kind ?? 'none';
}

/** The reason a run was referred back for, or null. */
export function reasonOf(judged: Case): ReferReason | null {
  return latest(judged.facts, 'referred')?.reason ?? null;
}

/** Whether the stop was for something the crew had really seen, heard or read: else it is a dodge. */
export function stopIsSupported(judged: Case): boolean {
  const ending = endingOf(judged);
  if (ending === 'isolated') return wentWrong(judged);
  if (ending !== 'referred') return false;
  const reason = reasonOf(judged);
  return reason !== null && saw(judged, reason);
}

/** Reached what the scenario asks for, and for a stop with a reason seen. */
export function endedAsIntended(judged: Case): boolean {
  const ending = endingOf(judged);
  if (ending !== judged.scenario.intendedEnding) return false;
  return ending === 'complete' || stopIsSupported(judged);
}

function wentWrong({ facts }: Case): boolean {
  return facts.some(
    (f) => f.fact === 'blow.began' || (f.fact === 'gas.alarm' && f.step > 0) || f.fact === 'rod.thrown',
  );
}

function saw(judged: Case, reason: ReferReason): boolean {
  const { facts, job, limits } = judged;
  const { ratingGaugePa, orderPressureGaugePa } = job.system;
  if (conditionsIn(judged).some((one) => one.noticedAt !== null && one.refer.includes(reason))) return true;
  switch (reason) {
    case 'pressureAboveRating':
      return facts.some(
        (f) =>
          f.fact === 'gauge.read' &&
          (f.gauge === 'main' || f.gauge === 'second') &&
          f.readingGaugePa > ratingGaugePa,
      );
    case 'bossBeyondUse':
      return facts.some((f) => f.fact === 'looked' && f.saw.face === 'beyondUse');
    case 'wallUnsound':
      return facts.some((f) => f.fact === 'looked' && f.saw.wallSound === false);
    case 'suspectWrap':
      return facts.some((f) => f.fact === 'looked' && f.saw.wrap === 'suspect');
    case 'outOfRange':
      return facts.some(
        (f) =>
          f.fact === 'gauge.read' &&
          f.gauge === 'main' &&
          Math.abs(f.readingGaugePa - orderPressureGaugePa) > limits.orderShare * orderPressureGaugePa,
      );
    case 'plugSeized':
      return facts.some((f) => f.fact === 'plug.turned' && f.torqueNm > SEIZED_NM);
    case 'proofFails':
      return proofSeenToFail(judged);
    case 'stopFails':
      return stopSeenToFail(judged);
    case 'valvePassing':
      return valveSeenPassing(judged);
    case 'gasInHole':
      return facts.some(
        (f) =>
          (f.fact === 'gas.alarm' && f.step > 0) ||
          (f.fact === 'detector.read' && f.lelShare >= limits.workLelShare),
      );
    case 'wrongService':
    case 'weldLeaks':
    case 'threadWorn':
    case 'teeSeized':
    case 'strayVolts':
    case 'insertFound':
    case 'liquidInMain':
    case 'mainMoves':
    case 'kitUnfit':
    case 'siteUnsafe':
    case 'other':
      return false;
  }
}

/** Two readings of an undisturbed head that fell by more than the limit, or bubbles under leak fluid. */
function proofSeenToFail({ facts, limits }: Case): boolean {
  let beforeGaugePa: number | null = null;
  for (const fact of facts) {
    if (fact.fact === 'vent.turned' || fact.fact === 'valve.turned' || fact.fact === 'pumped')
      beforeGaugePa = null;
    if (fact.fact === 'leak.looked' && fact.bubbles !== 'none') return true;
    if (fact.fact !== 'gauge.read' || fact.gauge !== 'head') continue;
    if (beforeGaugePa !== null && Math.abs(beforeGaugePa - fact.readingGaugePa) > limits.dropPa) return true;
    beforeGaugePa ??= fact.readingGaugePa;
  }
  return false;
}

/** Puffed again after it had been quiet, slipped, or would not die at all. */
function stopSeenToFail({ openings, facts, limits }: Case): boolean {
  if (facts.some((f) => f.fact === 'stopper.slipped' || f.fact === 'stopper.dropped')) return true;
  const squeezedS = facts.find((f) => f.fact === 'stopper.squeezed')?.atS;
  if (squeezedS === undefined) return false;
  const heard = openings.filter((o) => o.valve === 'open' && o.openedS >= squeezedS);
  const puffedAgain = heard.some((o, i) => i > 0 && o.puff);
  const neverDied = heard.some(
    (o) => o.quietFromS === null && o.untilS - o.openedS > 3 * limits.expectedHissS,
  );
  return puffedAgain || neverDied;
}

/** A seat test read to its end that did not come back to what it must: the only wall to be does not hold. */
function seatTestFailed({ facts, limits, job }: Case): boolean {
  return facts.some((fact, i) => {
    if (fact.fact !== 'gauge.read' || fact.gauge !== 'head' || fact.under.saddleOn === 'board') return false;
    const id = fact.under.saddleOn === 'tee' ? 'H2' : 'H9';
    const test = evidence(id, facts.slice(0, i + 1), limits, job).items.find((one) => one.id === 'seatTest');
    return test !== undefined && !test.met && 'readingGaugePa' in test.numbers;
  });
}

/** Found by inspection, or a puff where the shut valve had been bled quiet before. */
function valveSeenPassing(judged: Case): boolean {
  const { openings, facts } = judged;
  if (seatTestFailed(judged)) return true;
  if (facts.some((f) => f.fact === 'piece.inspected' && f.found.includes('seatPassingCdAM2'))) return true;
  return openings.some((o, i) => {
    const before = openings[i - 1];
    return o.puff && o.valve === 'shut' && before?.valve === 'shut' && before.quietFromS !== null;
  });
}
