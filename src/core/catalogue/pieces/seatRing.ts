import { mm, teeSizes, type TeeSize } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import { onceASize, type PieceEntry } from '../piece.ts';

export interface SeatRingDims {
  readonly rubberIdM: number;
  readonly rubberOdM: number;
  readonly rubberThickM: number;
  readonly plateOdM: number;
  readonly plateThickM: number;
}

const rubber: Record<TeeSize, readonly [number, number]> = {
  '3/4': [28.5, 36.3],
  '1': [35.5, 44],
  '1-1/4': [44.5, 53.8],
};

/** Flat metal ring that fills the saddle's recess, bonded rubber below it on the boss. */
export const seatRing = {
  kind: 'seatRing',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: onceASize((size: TeeSize): SeatRingDims => ({
    rubberIdM: mm(rubber[size][0]),
    rubberOdM: mm(rubber[size][1]),
    rubberThickM: mm(2),
    plateOdM: mm(91.6),
    plateThickM: mm(9),
  })),
  sources: {
    rubberIdM: ASSUMED,
    rubberOdM: ASSUMED,
    rubberThickM: ASSUMED,
    plateOdM: ASSUMED,
    plateThickM: ASSUMED,
  },
} satisfies PieceEntry<'tee', SeatRingDims>;
