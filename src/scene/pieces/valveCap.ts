import { pieces } from '../../core/catalogue/index.ts';
import { lathe } from '../shape/lathe.ts';
import { acrossFlats } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { HAIR, oRing, skirtBelow, type PieceShape } from './part.ts';

/** Cap over the valve's spigot with a hexagon on it, origin on its seat. */
export const valveCap: PieceShape = () => {
  const { heightM, boreM } = pieces.valveCap.dims();
  const body = lathe([
    [0, 0.002],
    [boreM / 2, 0.002],
    ...skirtBelow(0.05),
    [0.05, heightM - 0.001],
    [0.049, heightM],
    [0, heightM],
  ]);
  const hexagon = prism(acrossFlats(6, 0.05), heightM + HAIR, heightM + 0.018);
  return [
    { name: 'cap', stuff: 'brass', cut: true, body },
    oRing(),
    { name: 'hexagon', stuff: 'brass', cut: true, body: hexagon },
  ];
};
