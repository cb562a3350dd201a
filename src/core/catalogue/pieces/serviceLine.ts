import { pipes } from '../pipe.ts';
import { teeSizes } from '../sizes.ts';
import { ASSUMED, B36 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Service pipe of the tee's size, as far as the hole shows it; its true length is the exercise's. */
export const serviceLine = {
  kind: 'serviceLine',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size) => ({ odM: pipes[size].odM, idM: pipes[size].idM, shownLengthM: 0.75 }),
  sources: { odM: B36, idM: B36, shownLengthM: ASSUMED },
} satisfies PieceEntry<'tee', { odM: number; idM: number; shownLengthM: number }>;
