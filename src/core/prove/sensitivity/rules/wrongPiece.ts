import { costs, type Expected } from './expected.ts';

/** Pieces that go with a size: the first other one on the board is of another. */
const sized: readonly string[] = [
  'seatRing', 'boreStopper', 'keeperPlug', 'cupGasket', 'splitCollar', 'closingPlug',
]; // prettier-ignore

/** What another size of a piece must cost where it is taken up, or null where nothing is written. */
export function whenWrongPiece(key: string): Expected | null {
  const [, act, piece] = /^(piece\.place|rod\.load) (\w+)$/.exec(key) ?? [];
  if (act === undefined || !sized.includes(piece)) return null;
  return costs('kit', 1, 'the size is stamped on it, and the work has another');
}
