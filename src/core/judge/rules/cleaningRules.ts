import { kindOf } from '../../procedure/index.ts';
import type { Case, Rule } from '../case.ts';

/** Bare sound metal under every seal and chain: rust under rubber leaks, scale under a chain gives. */
export const cleaningRules: Rule = (judged) => {
  const items = [
    ...(dirtyBefore(judged, 'boss', 'seatRing') ? ['boss'] : []),
    ...(dirtyBefore(judged, 'pipe', 'chain') ? ['pipe'] : []),
    ...(dirtyBefore(judged, 'coupling', 'cupGasket') ? ['coupling'] : []),
  ];
  if (items.length === 0) return [];
  const atS = placedS(judged, 'seatRing') ?? placedS(judged, 'chain') ?? placedS(judged, 'cupGasket') ?? 0;
  return [{ id: 'facesNotCleaned', atS, points: items.length, items, causes: ['cleaning'] }];
};

function dirtyBefore(judged: Case, place: string, kind: string): boolean {
  const atS = placedS(judged, kind);
  if (atS === null) return false;
  return !judged.facts.some((f) => f.fact === 'cleaned' && f.at === place && f.atS <= atS);
}

function placedS({ facts, job }: Case, kind: string): number | null {
  return facts.find((f) => f.fact === 'piece.placed' && kindOf(job, f.piece) === kind)?.atS ?? null;
}
