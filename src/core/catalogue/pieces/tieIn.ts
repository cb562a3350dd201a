import { streetTees } from '../fittings.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED, B163 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Nipple and union between the renewal tee's branch and the tested service: the one joint that was not in its test. */
export const tieIn = {
  kind: 'tieIn',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size) => ({ odM: streetTees[size].bandOdM, lengthM: mm(60) }),
  sources: { odM: B163, lengthM: ASSUMED },
} satisfies PieceEntry<'tee', { odM: number; lengthM: number }>;
