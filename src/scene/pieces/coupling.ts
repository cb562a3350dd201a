import { pieces } from '../../core/catalogue/index.ts';
import { lathe, type RZ } from '../shape/lathe.ts';
import { femaleThread } from '../shape/thread.ts';
import { HAIR, mainSurfaceZM, type PieceShape } from './part.ts';
import type { Vec3 } from '../shape/solid.ts';

/** Half coupling with its foot on the main, and the fillet weld round it. Origin on the crown of the main. */
export const coupling: PieceShape = ({ mainNps, teeSize }) => {
  const { odM, heightM, boreM, weldLegM } = pieces.coupling.dims(teeSize);
  const mainR = pieces.main.dims(mainNps).odM / 2;
  const r = odM / 2;
  const threadBottom = heightM - 0.02;
  const thread = femaleThread(teeSize, threadBottom, heightM - 0.001, heightM);
  const mouth = thread[thread.length - 1][0] + 0.001;
  // The first two points stand on the main; the rest are level.
  const profile: RZ[] = [
    [boreM / 2, 0],
    [r, 0],
    [r, heightM - 0.0012],
    [r - 0.0012, heightM],
    [mouth, heightM],
    ...[...thread].reverse(),
    [boreM / 2, threadBottom],
  ];
  const onMain =
    (below: number) =>
    (radius: number, a: number, z: number, i: number): Vec3 => {
      const [x, y] = [radius * Math.cos(a), radius * Math.sin(a)];
      return [x, y, i < below ? z + mainSurfaceZM(mainR, y) + HAIR : z];
    };
  const weld: RZ[] = [
    [r + HAIR, 0],
    [r + weldLegM, 0],
    [r + weldLegM * 0.42, weldLegM * 0.48],
    [r + HAIR, weldLegM],
  ];
  return [
    { name: 'body', stuff: 'steel', cut: true, body: lathe(profile, { place: onMain(2) }) },
    { name: 'weld', stuff: 'weld', cut: true, body: lathe(weld, { place: onMain(4) }) },
  ];
};
