import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Magnet tip, to fetch what was dropped. */
export const magnet = {
  kind: 'magnet',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => ({ lengthM: mm(34), odM: mm(18) }),
  sources: { lengthM: ASSUMED, odM: ASSUMED },
} satisfies PieceEntry<'one', { lengthM: number; odM: number }>;
