import { couplingSizes } from '../fittings.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface CupGasketDims {
  /** Free bore of the sleeve, stretched over the coupling. */
  readonly boreM: number;
  readonly sleeveWallM: number;
  readonly sleeveM: number;
  readonly flangeOdM: number;
  readonly flangeThickM: number;
}

/** Moulded rubber over the cut tee: sleeve on the round of the coupling, flange under the saddle. */
export const cupGasket = {
  kind: 'cupGasket',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): CupGasketDims => ({
    boreM: couplingSizes[size].odM - mm(2),
    sleeveWallM: mm(8),
    sleeveM: mm(11),
    flangeOdM: mm(91),
    flangeThickM: mm(6),
  }),
  sources: {
    boreM: ASSUMED,
    sleeveWallM: ASSUMED,
    sleeveM: ASSUMED,
    flangeOdM: ASSUMED,
    flangeThickM: ASSUMED,
  },
} satisfies PieceEntry<'tee', CupGasketDims>;
