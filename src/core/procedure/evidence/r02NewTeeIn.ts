import { every, latest } from '../recall.ts';
import { renewalLimits } from '../settings.ts';
import { shownTight } from '../shownTight.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** New tee in: far enough and not forced, on its heading by going on only, and silent: its open branch shows stopper and thread. */
export function newTeeIn(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const set = limits.renewal ?? renewalLimits;
  const openS = latest(facts, 'tee.free')?.atS ?? null;
  const tee = latest(facts, 'renewal.turned', (f) => f.engagedTurns > 0);
  const threads = latest(facts, 'looked', (f) => f.at === 'downBore' && f.saw.threadsSound === true);
  const engagedTurns = tee?.engagedTurns ?? 0;
  const [leastPast, mostPast] = set.pastHandTurns;
  const leastTurns = limits.closingHandTurns + leastPast;
  const mostTurns = limits.closingHandTurns + 1 + mostPast;
  const torqueNm = tee?.torqueNm ?? 0;
  const [lowNm, highNm] = set.teeNm;
  const offRad = Math.abs(tee?.offHeadingRad ?? Math.PI);
  const backward = every(facts, 'renewal.turned', (f) => f.backward).length;
  return [
    item('threads', openS !== null && threads !== null && threads.atS >= openS),
    item('turns', tee !== null && engagedTurns >= leastTurns && engagedTurns <= mostTurns, {
      engagedTurns,
      leastTurns,
    }),
    item('torque', tee !== null && torqueNm >= lowNm && torqueNm <= highNm, { torqueNm, lowNm, highNm }),
    item('notCrossed', tee !== null && !tee.crossed),
    item('heading', tee !== null && offRad <= set.headingRad, { offRad, limitRad: set.headingRad }),
    item('onward', tee !== null && backward === 0, { timesBack: backward }),
    ...shownTight(told, tee?.atS ?? null),
  ];
}
