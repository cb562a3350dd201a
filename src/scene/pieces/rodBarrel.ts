import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { acrossFlats, circle } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { cockParts } from './cock.ts';
import { HAIR, oRing, skirtBelow, type PieceShape } from './part.ts';

/** Height of the bleed cock above the seat. */
export const BLEED_AT_M = 0.06;

/** Housing with the gland on top and the bleed cock at the side. Origin on its seat. */
export const rodBarrel: PieceShape = () => {
  const d = pieces.rodBarrel.dims();
  const hole = pieces.rod.dims().odM / 2 + HAIR;
  const gland = d.glandOdM / 2;
  const top = d.heightM;
  const neckTop = top + d.glandHeightM * 0.6;
  const box = hole + 0.006;
  const body = lathe([
    ...skirtBelow(),
    [0.049, top - 0.008],
    [0.041, top],
    [gland, top],
    [gland, neckTop],
    [box + HAIR, neckTop],
    [box + HAIR, top - 0.004],
    [hole, top - 0.004],
    [hole, d.cavityM],
    [d.boreM / 2, d.cavityM],
  ]);
  const packing = ring(hole, box, top - 0.004 + HAIR, neckTop - 0.006, 24);
  const nutTop = top + d.glandHeightM;
  const nut = prism(acrossFlats(6, d.glandOdM * 0.92), neckTop + HAIR, nutTop, [circle(hole, 24)]);
  const follower = ring(hole, box, neckTop - 0.006 + HAIR, neckTop, 24);
  return [
    { name: 'body', stuff: 'steel', cut: true, body },
    oRing(),
    { name: 'packing', stuff: 'rubber', cut: true, body: packing },
    { name: 'follower', stuff: 'brass', cut: true, body: follower },
    { name: 'nut', stuff: 'brass', cut: true, body: nut },
    ...cockParts(0.049, BLEED_AT_M, 'bleedRad', 1),
  ];
};
