import { pieces } from '../../core/catalogue/index.ts';
import { ring } from '../shape/lathe.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Magnet tip, origin at its face. */
export const magnet: PieceShape = () => {
  const d = pieces.magnet.dims();
  return [
    { name: 'pole', stuff: 'paint', cut: true, body: ring(0, d.odM / 2, 0, 0.016, 28) },
    {
      name: 'shank',
      stuff: 'steel',
      cut: true,
      body: ring(0, d.odM / 2 - 0.002, 0.016 + HAIR, d.lengthM - HAIR, 28),
    },
  ];
};
