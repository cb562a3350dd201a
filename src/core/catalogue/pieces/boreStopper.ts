import { pipes } from '../pipe.ts';
import { mm, teeSizes, type TeeSize } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import { onceASize, type PieceEntry } from '../piece.ts';

export interface BoreStopperDims {
  /** Bore it is made for. */
  readonly boreM: number;
  readonly freeOdM: number;
  readonly rubberLengthM: number;
  readonly coreOdM: number;
  /** Thread of the inner rod that squeezes it: M8, or M10 for the largest, coarse pitch. */
  readonly screwM: number;
  readonly screwPitchM: number;
  readonly washerOdM: number;
  readonly washerThickM: number;
  /** Stem above the upper washer, caught by the holder. */
  readonly stemM: number;
  /** Nut below the lower washer. */
  readonly nutM: number;
  /** From the top of the upper washer to the lowest point. */
  readonly belowTopM: number;
}

const M8 = { screwMm: 8, pitchMm: 1.25 };
const M10 = { screwMm: 10, pitchMm: 1.5 };

const made: Record<TeeSize, { freeMm: number; rubberMm: number; screw: typeof M8 }> = {
  '3/4': { freeMm: 19.2, rubberMm: 17, screw: M8 },
  '1': { freeMm: 24.6, rubberMm: 20, screw: M8 },
  '1-1/4': { freeMm: 32.8, rubberMm: 24, screw: M10 },
};

/** Rubber between two steel washers, by size. */
export const boreStopper = {
  kind: 'boreStopper',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: onceASize((size: TeeSize): BoreStopperDims => {
    const { freeMm, rubberMm, screw } = made[size];
    return {
      boreM: pipes[size].idM,
      freeOdM: mm(freeMm),
      rubberLengthM: mm(rubberMm),
      coreOdM: mm(screw.screwMm),
      screwM: mm(screw.screwMm),
      screwPitchM: mm(screw.pitchMm),
      washerOdM: mm(freeMm - 0.4),
      washerThickM: mm(2),
      stemM: mm(14),
      nutM: mm(5),
      belowTopM: mm(rubberMm + 2 + 2 + 5),
    };
  }),
  sources: {
    boreM: ASSUMED,
    freeOdM: ASSUMED,
    rubberLengthM: ASSUMED,
    coreOdM: ASSUMED,
    screwM: ASSUMED,
    screwPitchM: 'from memory: ISO 261 coarse pitch',
    washerOdM: ASSUMED,
    washerThickM: ASSUMED,
    stemM: ASSUMED,
    nutM: ASSUMED,
    belowTopM: 'computed: washers, rubber and nut',
  },
} satisfies PieceEntry<'tee', BoreStopperDims>;
