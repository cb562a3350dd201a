import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import type { PieceShape } from './part.ts';

/** Gauge on its pump's head, origin at the foot, standing along +z. */
export const testSet: PieceShape = () => {
  const d = pieces.testSet.dims();
  const foot = d.heightM - d.dialDepthM;
  return [
    { name: 'head', stuff: 'bright', cut: false, body: ring(0, d.bodyOdM / 2, 0, foot - 0.0005) },
    {
      name: 'dial',
      stuff: 'dial',
      cut: false,
      body: lathe([
        [0, foot],
        [d.dialOdM / 2, foot],
        [d.dialOdM / 2, d.heightM],
        [0, d.heightM],
      ]),
    },
  ];
};
