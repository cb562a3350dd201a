import { streetTees } from '../fittings.ts';
import { mm, teeSizes, type TeeSize } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface RenewalTeeDims {
  /** Round body: the circle it sweeps as it turns is its own outside. */
  readonly bodyOdM: number;
  readonly axisToBossM: number;
  readonly axisToMaleEndM: number;
  readonly portIdM: number;
}

/** Outside of the round body by size, mm: inside the gauge ring of the 76 mm rig, outside the coupling's own (assumed). */
const bodyMm: Readonly<Record<TeeSize, number>> = { '3/4': 52, '1': 60, '1-1/4': 70 };

/**
 * Round-bodied tee that passes the rig's bore, its stopper and keeper already in. Turned to the heights, threads and
 * bores of the street tee it replaces, so that the same rings, stoppers and plugs fit it (assumed: ours).
 */
export const renewalTee = {
  kind: 'renewalTee',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size: TeeSize): RenewalTeeDims => ({
    bodyOdM: mm(bodyMm[size]),
    axisToBossM: streetTees[size].centreToFaceM,
    axisToMaleEndM: streetTees[size].centreToMaleEndM,
    portIdM: streetTees[size].portIdM,
  }),
  sources: { bodyOdM: ASSUMED, axisToBossM: ASSUMED, axisToMaleEndM: ASSUMED, portIdM: ASSUMED },
} satisfies PieceEntry<'tee', RenewalTeeDims>;
