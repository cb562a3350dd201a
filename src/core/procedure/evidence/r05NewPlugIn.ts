import { latest, since } from '../recall.ts';
import { shownTight } from '../shownTight.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** New top plug in: turned far enough, not forced, not crossed, silent with the valve open, and seen square. */
export function newPlugIn(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const plug = latest(facts, 'newPlug.turned', (f) => f.engagedTurns > 0);
  const look = plug
    ? since(facts, plug.atS).findLast((f) => f.fact === 'looked' && f.at === 'downBore')
    : undefined;
  const square = look?.fact === 'looked' && look.saw.visible && look.saw.closingSquare === true;
  const engagedTurns = plug?.engagedTurns ?? 0;
  const leastTurns = limits.closingHandTurns + limits.closingPastHandTurns[0];
  const torqueNm = plug?.torqueNm ?? 0;
  const [lowNm, highNm] = limits.closingNm;
  return [
    item('turns', plug !== null && engagedTurns >= leastTurns, { engagedTurns, leastTurns }),
    item('torque', plug !== null && torqueNm >= lowNm && torqueNm <= highNm, { torqueNm, lowNm, highNm }),
    item('notCrossed', plug !== null && !plug.crossed),
    ...shownTight(told, plug?.atS ?? null),
    item('square', square),
  ];
}
