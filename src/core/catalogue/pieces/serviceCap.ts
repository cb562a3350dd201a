import { streetTees } from '../fittings.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED, B163 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Cap for the cut end of the dead service. */
export const serviceCap = {
  kind: 'serviceCap',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size) => ({ odM: streetTees[size].bandOdM, lengthM: mm(30), endThickM: mm(6) }),
  sources: { odM: B163, lengthM: ASSUMED, endThickM: ASSUMED },
} satisfies PieceEntry<'tee', { odM: number; lengthM: number; endThickM: number }>;
