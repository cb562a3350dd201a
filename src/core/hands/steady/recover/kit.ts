import type { KitKind, ReferReason } from '../../../rig/index.ts';
import { act, lastOf, pick, piecesOf, sizeOf, StopWork, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';

/** Flaws that a rag or a wire takes away; anything else on a piece is damage. */
const wipedAway: ReadonlySet<string> = new Set(['gritCdAM2', 'oily', 'bleedBlocked']);

/**
 * The piece of a kind that is to be used, looked over. A doubtful one is wiped where that mends it and there is no
 * other, else set aside and the next one taken; without a next one the work stops, for the reason that sent the crew to it.
 */
export function* soundPiece(crew: Crew, kind: KitKind, nth = 0, otherwise: ReferReason = 'kitUnfit'): Work {
  for (;;) {
    if (!has(crew, kind, nth)) throw new StopWork(otherwise);
    const piece = pick(crew, kind, nth);
    const found = yield* lookedOver(crew, piece);
    if (found.length === 0) return;
    if (found.every((flaw) => wipedAway.has(flaw)) && !hasOther(crew, kind, nth)) {
      yield* act(crew, { kind: 'piece.clean', piece });
      return;
    }
    yield* setAside(crew, piece);
  }
}

function* lookedOver(crew: Crew, piece: string): Work<readonly string[]> {
  const facts = yield* act(crew, { kind: 'piece.inspect', piece });
  return lastOf(facts, 'piece.inspected')?.found ?? [];
}

function hasOther(crew: Crew, kind: KitKind, nth: number): boolean {
  return has(crew, kind, nth + 1) && pick(crew, kind, nth) !== pick(crew, kind, nth + 1);
}

/** Whether there is an nth piece of the kind and size that nobody has set aside. */
function has(crew: Crew, kind: KitKind, nth: number): boolean {
  return piecesOf(crew, kind, sizeOf(crew, kind)).length > nth;
}

export function* setAside(crew: Crew, piece: string): Work {
  yield* act(crew, { kind: 'piece.reject', piece });
  crew.setAside.add(piece);
}

/** A piece that failed at its work, off the rig: another is taken where there is one. True where there is. */
export function* another(crew: Crew, kind: KitKind, otherwise: ReferReason): Work<boolean> {
  const piece = pick(crew, kind);
  if (!hasOther(crew, kind, 0)) return false;
  yield* setAside(crew, piece);
  yield* soundPiece(crew, kind, 0, otherwise);
  return true;
}
