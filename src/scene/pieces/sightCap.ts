import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { cockParts } from './cock.ts';
import { HAIR, oRing, skirtBelow, type PieceShape } from './part.ts';

/** Cap with a thick window held by a lip, and its own bleed. Origin on its seat. */
export const sightCap: PieceShape = () => {
  const d = pieces.sightCap.dims();
  const window = d.windowOdM / 2;
  const top = d.cavityM + d.windowThickM;
  const body = lathe([
    ...skirtBelow(),
    [0.049, d.heightM - 0.002],
    [0.047, d.heightM],
    [0.03, d.heightM],
    [0.03, top + 0.0005],
    [window + HAIR, top + 0.0005],
    [window + HAIR, d.cavityM],
    [d.boreM / 2, d.cavityM],
  ]);
  return [
    { name: 'body', stuff: 'steel', cut: true, body },
    oRing(),
    { name: 'window', stuff: 'glass', cut: true, body: ring(0, window, d.cavityM + HAIR, top, 40) },
    ...cockParts(0.049, 0.03, 'bleedRad', 1),
  ];
};
