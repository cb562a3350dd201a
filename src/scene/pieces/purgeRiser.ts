import { pieces } from '../../core/catalogue/index.ts';
import { ring } from '../shape/lathe.ts';
import type { PieceShape } from './part.ts';

/** Standpipe, origin at its foot, along +z. */
export const purgeRiser: PieceShape = () => {
  const d = pieces.purgeRiser.dims();
  return [{ name: 'pipe', stuff: 'steel', cut: true, body: ring(d.idM / 2, d.odM / 2, 0, d.heightM) }];
};
