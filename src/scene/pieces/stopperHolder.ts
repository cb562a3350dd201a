import { pieces } from '../../core/catalogue/index.ts';
import { lathe } from '../shape/lathe.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Twist-lock tip: a hollow end over the stopper's stem. Origin at its mouth. */
export const stopperHolder: PieceShape = () => {
  const d = pieces.stopperHolder.dims();
  const stem = pieces.boreStopper.dims('1').coreOdM / 2 + 0.0006;
  const r = d.odM / 2;
  const body = lathe([
    [stem, 0.0005],
    [r - 0.001, 0.0005],
    [r, 0.0015],
    [r, d.lengthM - 0.008],
    [r - 0.002, d.lengthM - 0.0065],
    [r - 0.002, d.lengthM - HAIR],
    [0, d.lengthM - HAIR],
    [0, d.slotDepthM],
    [stem, d.slotDepthM],
  ]);
  return [{ name: 'holder', stuff: 'brass', cut: true, body }];
};
