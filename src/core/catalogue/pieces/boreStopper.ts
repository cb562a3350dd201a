import { pipes } from '../pipe.ts';
import { mm, teeSizes, type TeeSize } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface BoreStopperDims {
  /** Bore it is made for. */
  readonly boreM: number;
  readonly freeOdM: number;
  readonly rubberLengthM: number;
  readonly coreOdM: number;
  readonly washerOdM: number;
  readonly washerThickM: number;
  /** Stem above the upper washer, caught by the holder. */
  readonly stemM: number;
  /** Nut below the lower washer. */
  readonly nutM: number;
  /** From the top of the upper washer to the lowest point. */
  readonly belowTopM: number;
}

const made: Record<TeeSize, { freeMm: number; rubberMm: number }> = {
  '3/4': { freeMm: 19.2, rubberMm: 17 },
  '1': { freeMm: 24.6, rubberMm: 20 },
  '1-1/4': { freeMm: 32.8, rubberMm: 24 },
};

/** Rubber between two steel washers, by size. */
export const boreStopper = {
  kind: 'boreStopper',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): BoreStopperDims => {
    const { freeMm, rubberMm } = made[size];
    return {
      boreM: pipes[size].idM,
      freeOdM: mm(freeMm),
      rubberLengthM: mm(rubberMm),
      coreOdM: mm(8),
      washerOdM: mm(freeMm - 0.4),
      washerThickM: mm(2),
      stemM: mm(14),
      nutM: mm(5),
      belowTopM: mm(rubberMm + 2 + 2 + 5),
    };
  },
  sources: {
    boreM: ASSUMED,
    freeOdM: ASSUMED,
    rubberLengthM: ASSUMED,
    coreOdM: ASSUMED,
    washerOdM: ASSUMED,
    washerThickM: ASSUMED,
    stemM: ASSUMED,
    nutM: ASSUMED,
    belowTopM: 'computed: washers, rubber and nut',
  },
} satisfies PieceEntry<'tee', BoreStopperDims>;
