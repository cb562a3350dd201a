import { pieces } from '../../core/catalogue/index.ts';
import { ring } from '../shape/lathe.ts';
import { acrossFlats, circle } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { join } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Socket for a square head, origin at its mouth, rod above. */
export const socket: PieceShape = ({ teeSize }) => {
  const d = pieces.socket.dims(teeSize);
  const r = d.odM / 2;
  const shank = pieces.rod.dims().odM / 2 + 0.003;
  const body = join(
    prism(circle(r, 32), 0, d.cavityM, [acrossFlats(4, d.squareM)]),
    ring(0, r, d.cavityM + HAIR, d.cavityM + 0.014, 32),
    ring(0, Math.min(shank, r - 0.001), d.cavityM + 0.01404, d.lengthM - HAIR, 24),
  );
  return [{ name: 'socket', stuff: 'steel', cut: true, body }];
};
