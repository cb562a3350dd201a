import { pieces } from '../../core/catalogue/index.ts';
import { ported } from '../shape/ported.ts';
import { alongX, moved } from '../shape/solid.ts';
import type { PieceShape } from './part.ts';

/** The main along x with its crown at the origin, bored under the coupling. */
export const main: PieceShape = ({ mainNps, teeSize }) => {
  const { odM, idM, lengthM } = pieces.main.dims(mainNps);
  const hole = pieces.coupling.dims(teeSize).boreM / 2;
  const [outer, inner, half] = [odM / 2, idM / 2, lengthM / 2];
  const body = ported({
    run: [
      { rz: [outer, -half], wall: 'outer', pierced: true },
      { rz: [outer, half], wall: 'outer' },
      { rz: [inner, half], wall: 'inner', pierced: true },
      { rz: [inner, -half], wall: 'inner' },
    ],
    outerBranchM: hole,
    innerBranchM: hole,
    branch: [],
    restFacets: 40,
  });
  return [{ name: 'pipe', stuff: 'steel', cut: true, body: moved(alongX(body), [0, 0, -outer]) }];
};
