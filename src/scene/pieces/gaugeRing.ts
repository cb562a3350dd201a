import { pieces } from '../../core/catalogue/index.ts';
import { ring } from '../shape/lathe.ts';
import type { PieceShape } from './part.ts';

/** Plain ring, origin on its underside. */
export const gaugeRing: PieceShape = () => {
  const d = pieces.gaugeRing.dims();
  return [{ name: 'ring', stuff: 'brass', cut: true, body: ring(d.idM / 2, d.odM / 2, 0, d.heightM) }];
};
