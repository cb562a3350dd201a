import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring, type RZ } from '../shape/lathe.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Plate in the saddle's recess, rubber under it on the boss; origin on the boss. Squeezed, the rubber bulges. */
export const seatRing: PieceShape = ({ teeSize, squeeze = 0 }) => {
  const d = pieces.seatRing.dims(teeSize);
  const [inner, outer, thick] = [d.rubberIdM / 2, d.rubberOdM / 2, d.rubberThickM];
  const bulge = 0.0007 * squeeze;
  const rubber: RZ[] = [
    [inner, HAIR],
    [outer, HAIR],
    [outer + bulge, thick * 0.3],
    [outer + bulge, thick * 0.7],
    [outer, thick],
    [inner, thick],
    [inner - bulge, thick * 0.7],
    [inner - bulge, thick * 0.3],
  ];
  return [
    {
      name: 'plate',
      stuff: 'bright',
      cut: true,
      body: ring(inner, d.plateOdM / 2, thick + HAIR, thick + d.plateThickM - HAIR),
    },
    { name: 'rubber', stuff: 'rubber', cut: true, body: lathe(rubber) },
  ];
};
