import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Split clamp on the rod above the gland: stops it downward only. */
export const depthCollar = {
  kind: 'depthCollar',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => ({ odM: mm(42), heightM: mm(18), boreM: mm(19.2) }),
  sources: { odM: ASSUMED, heightM: ASSUMED, boreM: ASSUMED },
} satisfies PieceEntry<'one', { odM: number; heightM: number; boreM: number }>;
