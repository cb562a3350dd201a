import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface RodDims {
  readonly odM: number;
  readonly lengthM: number;
  readonly strokeM: number;
  /** Rod's lower end above the underside of the barrel's bore when fully up (negative: below). */
  readonly fullyUpM: number;
  readonly innerOdM: number;
  readonly handleSpanM: number;
  readonly massKg: number;
}

/** Sliding rod with an inner rod through it; the tip screws on its lower end. Mass is with tip and piece. */
export const rod = {
  kind: 'rod',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): RodDims => ({
    odM: mm(19.05),
    lengthM: mm(800),
    strokeM: mm(450),
    fullyUpM: mm(35),
    innerOdM: mm(8),
    handleSpanM: mm(220),
    massKg: 3.1,
  }),
  sources: {
    odM: ASSUMED,
    lengthM: ASSUMED,
    strokeM: ASSUMED,
    fullyUpM: ASSUMED,
    innerOdM: ASSUMED,
    handleSpanM: ASSUMED,
    massKg: ASSUMED,
  },
} satisfies PieceEntry<'one', RodDims>;
