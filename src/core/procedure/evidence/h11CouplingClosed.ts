import { latest, since } from '../recall.ts';
import { shownTight } from '../shownTight.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Coupling closed: turned far enough, not forced, not crossed, and silent with the valve open after being shut in. */
export function couplingClosed(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const openS = latest(facts, 'tee.free')?.atS ?? null;
  const plug = openS === null ? null : latest(facts, 'closing.turned', (f) => f.atS >= openS);
  const threads = latest(facts, 'looked', (f) => f.at === 'downBore' && f.saw.threadsSound === true);
  const look = plug
    ? since(facts, plug.atS)
        .filter((f) => f.fact === 'looked' && f.at === 'downBore')
        .pop()
    : undefined;
  const square = look?.fact === 'looked' && look.saw.visible && look.saw.closingSquare === true;
  const engagedTurns = plug?.engagedTurns ?? 0;
  const torqueNm = plug?.torqueNm ?? 0;
  const leastTurns = limits.closingHandTurns + limits.closingPastHandTurns[0];
  const [lowNm, highNm] = limits.closingNm;
  return [
    item('threads', openS !== null && threads !== null && threads.atS >= openS),
    item('turns', plug !== null && engagedTurns >= leastTurns, { engagedTurns, leastTurns }),
    item('torque', plug !== null && torqueNm >= lowNm && torqueNm <= highNm, { torqueNm, lowNm, highNm }),
    item('notCrossed', plug !== null && !plug.crossed),
    ...shownTight(told, plug?.atS ?? null),
    item('square', square),
  ];
}
