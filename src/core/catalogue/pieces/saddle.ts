import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { rigJoint } from './rigJoint.ts';

export interface SaddleDims {
  readonly boreM: number;
  readonly heightM: number;
  /** Recess in the underside for the seat ring's plate, later for the cup gasket's flange. */
  readonly recessDepthM: number;
  readonly recessOdM: number;
  readonly bodyOdM: number;
  /** Arms for the chains: half span across the main (left and right tensioner) and along it (the two chains). */
  readonly legHalfSpanM: number;
  readonly chainHalfSpanM: number;
  readonly armThickM: number;
  /** Net gas over the tee at the first seat, and with the cut tee standing inside at the second (NPS 1). */
  readonly firstNetM3: number;
  readonly secondNetM3: number;
}

/** Pressure-tight body over the tee; one body, used twice. */
export const saddle = {
  kind: 'saddle',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): SaddleDims => ({
    boreM: rigJoint.boreM,
    heightM: mm(100),
    recessDepthM: mm(9),
    recessOdM: mm(92),
    bodyOdM: mm(108),
    legHalfSpanM: mm(60),
    chainHalfSpanM: mm(68),
    armThickM: mm(16),
    firstNetM3: 0.4e-3,
    secondNetM3: 0.32e-3,
  }),
  sources: {
    boreM: ASSUMED,
    heightM: ASSUMED,
    recessDepthM: ASSUMED,
    recessOdM: ASSUMED,
    bodyOdM: ASSUMED,
    legHalfSpanM: ASSUMED,
    chainHalfSpanM: ASSUMED,
    armThickM: ASSUMED,
    firstNetM3: ASSUMED,
    secondNetM3: ASSUMED,
  },
  netVolumeM3: 0.4e-3,
} satisfies PieceEntry<'one', SaddleDims>;
