import { pieces } from '../../core/catalogue/index.ts';
import { lathe } from '../shape/lathe.ts';
import { alongY } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Nipple and union, origin at the tee's end, along +y. */
export const tieIn: PieceShape = ({ teeSize }) => {
  const d = pieces.tieIn.dims(teeSize);
  const pipe = pieces.serviceLine.dims(teeSize);
  const inner = pipe.idM / 2;
  const nipple = pipe.odM / 2 - HAIR;
  const nut = d.odM / 2;
  const middle = d.lengthM / 2;
  const body = lathe([
    [inner, 0],
    [nipple, 0],
    [nipple, middle - 0.014],
    [nut, middle - 0.012],
    [nut, middle + 0.012],
    [nipple, middle + 0.014],
    [nipple, d.lengthM],
    [inner, d.lengthM],
  ]);
  return [{ name: 'union', stuff: 'iron', cut: true, body: alongY(body) }];
};
