import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, type BodyDims } from './spool.ts';

export interface SightCapDims extends BodyDims {
  readonly windowOdM: number;
  readonly windowThickM: number;
  /** Depth of gas under the window. */
  readonly cavityM: number;
}

/** Screw-on cap with a thick window and its own bleed. */
export const sightCap = {
  kind: 'sightCap',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): SightCapDims => ({
    ...bodyDims(mm(52)),
    windowOdM: mm(78),
    windowThickM: mm(20),
    cavityM: mm(22),
  }),
  sources: { ...bodySources, windowOdM: ASSUMED, windowThickM: ASSUMED, cavityM: ASSUMED },
  netVolumeM3: 0.1e-3,
} satisfies PieceEntry<'one', SightCapDims>;
