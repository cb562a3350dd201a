import { newTeeChamber, proofItems } from '../proof.ts';
import { latest, latestDone, since } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Turned back to within this of where it stood counts as snug, turns. */
const SNUG_TURNS = 0.02;

/** Chamber proved on the new tee: as the first, over a keeper whose bite was broken with two wrenches and snugged again. */
export function newTeeProved(told: Told): readonly EvidenceItem[] {
  const inS = latest(told.facts, 'renewal.turned', (f) => f.engagedTurns > 0)?.atS ?? null;
  return [
    ...proofItems(told, newTeeChamber).map((one) => (inS === null ? { ...one, met: false } : one)),
    item('cracked', inS !== null && cracked(told, inS)),
    item('teeMark', inS !== null && teeStill(told, inS)),
  ];
}

function cracked({ facts, limits }: Told, inS: number): boolean {
  const back = latestDone(facts, 'keeper.turn', (a) => a.turns < 0 && a.holdBack);
  const snug = latestDone(facts, 'keeper.turn', (a) => a.turns > 0 && a.holdBack);
  if (back === null || snug === null) return false;
  const snugged = snug.action.turns >= -back.action.turns - SNUG_TURNS;
  return back.atS > inS && snug.atS > back.atS && snugged && -back.action.turns <= limits.biteTurns;
}

/** Marked across tee and coupling once it was in, and neither turned nor strained since. */
function teeStill({ facts }: Told, inS: number): boolean {
  const marked = latest(facts, 'marked', (f) => f.at === 'tee' && f.atS > inS);
  if (marked === null) return false;
  return !since(facts, marked.atS).some((f) => f.fact === 'renewal.turned' || f.fact === 'tee.strained');
}
