import { pieces } from '../../core/catalogue/index.ts';
import { lathe } from '../shape/lathe.ts';
import { alongY } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Cap over the cut end of the service, origin at the pipe's end, open toward +y. */
export const serviceCap: PieceShape = ({ teeSize }) => {
  const d = pieces.serviceCap.dims(teeSize);
  const pipe = pieces.serviceLine.dims(teeSize).odM / 2 + HAIR;
  const r = d.odM / 2;
  const depth = d.lengthM - d.endThickM;
  const body = lathe([
    [0, -d.endThickM],
    [r - 0.003, -d.endThickM],
    [r, -d.endThickM + 0.003],
    [r, depth - 0.001],
    [r - 0.001, depth],
    [pipe, depth],
    [pipe, -HAIR],
    [0, -HAIR],
  ]);
  return [{ name: 'cap', stuff: 'iron', cut: true, body: alongY(body) }];
};
