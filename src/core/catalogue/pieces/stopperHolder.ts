import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface StopperHolderDims {
  readonly lengthM: number;
  readonly odM: number;
  readonly slotDepthM: number;
}

/** Twist-lock tip with detent for the stopper's stem; it unlatches clockwise. */
export const stopperHolder = {
  kind: 'stopperHolder',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): StopperHolderDims => ({ lengthM: mm(34), odM: mm(19.05), slotDepthM: mm(15) }),
  sources: { lengthM: ASSUMED, odM: ASSUMED, slotDepthM: ASSUMED },
} satisfies PieceEntry<'one', StopperHolderDims>;
