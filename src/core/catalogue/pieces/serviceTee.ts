import { streetTees } from '../fittings.ts';
import { taperThreads } from '../npt.ts';
import { pipes } from '../pipe.ts';
import { teeSizes, type TeeSize } from '../sizes.ts';
import { ASSUMED, B163, B1201 } from '../source.ts';
import { onceASize, type PieceEntry } from '../piece.ts';

export interface ServiceTeeDims {
  /** Branch axis to boss. */
  readonly axisToBossM: number;
  readonly axisToMaleEndM: number;
  readonly bandOdM: number;
  readonly bandWidthM: number;
  readonly bodyOdM: number;
  readonly portIdM: number;
  /** Lower bore: from the underside of the port to the male end. */
  readonly lowerBoreM: number;
  readonly lowerBoreLengthM: number;
  readonly maleOdM: number;
}

/** Malleable street tee. The lower bore is taken as the schedule-40 bore of its size. */
export const serviceTee = {
  kind: 'serviceTee',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: onceASize((size: TeeSize): ServiceTeeDims => {
    const t = streetTees[size];
    return {
      axisToBossM: t.centreToFaceM,
      axisToMaleEndM: t.centreToMaleEndM,
      bandOdM: t.bandOdM,
      bandWidthM: t.bandWidthM,
      bodyOdM: t.bodyOdM,
      portIdM: t.portIdM,
      lowerBoreM: pipes[size].idM,
      lowerBoreLengthM: t.centreToMaleEndM - t.portIdM / 2,
      maleOdM: taperThreads[size].e0M + 0.8 * taperThreads[size].pitchM,
    };
  }),
  sources: {
    axisToBossM: B163,
    axisToMaleEndM: B163,
    bandOdM: B163,
    bandWidthM: B163,
    bodyOdM: ASSUMED,
    portIdM: ASSUMED,
    lowerBoreM: ASSUMED,
    lowerBoreLengthM: ASSUMED,
    maleOdM: B1201,
  },
} satisfies PieceEntry<'tee', ServiceTeeDims>;
