import { costs, costsIn, type Expected } from './expected.ts';

/** Pieces that go with a size: the first other one on the board is of another. */
const sized: readonly string[] = [
  'seatRing', 'boreStopper', 'cupGasket', 'splitCollar',
]; // prettier-ignore

/** What another size of a piece must cost where it is taken up, or null where nothing is written. */
export function whenWrongPiece(key: string): Expected | null {
  const [, act, piece] = /^(piece\.place|rod\.load|rod\.fit) (\w+)$/.exec(key) ?? [];
  if (act === undefined) return null;
  if (piece === 'socket') return costsIn(['kit', 'holdPoints'], 1, 'it grips no square of this size');
  // these do not go in at all, or their hold point asks for the size
  if (piece === 'keeperPlug' || piece === 'closingPlug')
    return costsIn(['kit', 'holdPoints'], 1, 'the size is stamped on it, and the work has another');
  if (!sized.includes(piece)) return null;
  return costs('kit', 1, 'the size is stamped on it, and the work has another');
}
