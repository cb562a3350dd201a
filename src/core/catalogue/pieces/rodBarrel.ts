import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, type BodyDims } from './spool.ts';

export interface RodBarrelDims extends BodyDims {
  /** Length of the bore under the gland. */
  readonly cavityM: number;
  readonly glandHeightM: number;
  readonly glandOdM: number;
  readonly bleedBoreM: number;
}

/** Sealed housing for the sliding rod: gland on top, bleed cock at the side. */
export const rodBarrel = {
  kind: 'rodBarrel',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): RodBarrelDims => ({
    ...bodyDims(mm(252)),
    cavityM: mm(240),
    glandHeightM: mm(46),
    glandOdM: mm(44),
    bleedBoreM: mm(3),
  }),
  sources: {
    ...bodySources,
    cavityM: ASSUMED,
    glandHeightM: ASSUMED,
    glandOdM: ASSUMED,
    bleedBoreM: ASSUMED,
  },
  netVolumeM3: 1.02e-3,
} satisfies PieceEntry<'one', RodBarrelDims>;
