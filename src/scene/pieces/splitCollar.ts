import { pieces } from '../../core/catalogue/index.ts';
import { latheArc, ring, type RZ } from '../shape/lathe.ts';
import { acrossFlats, type Point2 } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { alongY, join, moved, turned, type Solid, type Vec3 } from '../shape/solid.ts';
import { HAIR, mainSurfaceZM, type Joint, type PieceShape } from './part.ts';

const PARTING_RAD = 0.012;
const SPIGOT_R = 0.0452;
const STEP_M = 0.0048;

/** Two halves parted along the main, foot on its round, ears and bolts at ±x. Origin on the crown of the main. */
export const splitCollar: PieceShape = ({ mainNps, teeSize }) => {
  const d = pieces.splitCollar.dims(teeSize);
  const mainR = pieces.main.dims(mainNps).odM / 2;
  const top = pieces.coupling.dims(teeSize).heightM - d.belowFaceM;
  const sleeveLow = top - pieces.cupGasket.dims(teeSize).sleeveM - 0.0006;
  const [outer, foot, sleeve] = [d.odM / 2, d.footBoreM / 2, d.sleeveBoreM / 2];
  // The first two points stand on the main.
  const profile: RZ[] = [
    [foot, 0],
    [outer, 0],
    [outer, top - STEP_M - 0.001],
    [outer - 0.001, top - STEP_M],
    [SPIGOT_R, top - STEP_M],
    [SPIGOT_R, top],
    [sleeve, top],
    [sleeve, sleeveLow],
    [foot, sleeveLow - 0.001],
  ];
  const place = (r: number, a: number, z: number, i: number): Vec3 => {
    const [x, y] = [r * Math.cos(a), r * Math.sin(a)];
    return [x, y, i < 2 ? mainSurfaceZM(mainR, y) + HAIR : z];
  };
  const earTop = top - STEP_M - 0.001;
  const earLow = Math.max(0.0015, earTop - d.earThickM);
  const reach = Math.asin(0.015 / outer);
  const ear: Point2[] = [
    ...Array.from({ length: 6 }, (_, i): Point2 => {
      const a = reach + ((PARTING_RAD - reach) * i) / 5;
      return [(outer + HAIR) * Math.cos(a), (outer + HAIR) * Math.sin(a)];
    }),
    [d.earReachM, 0.0008],
    [d.earReachM, 0.0115],
  ];
  const half = (from: number): Solid[] => {
    const earBody = prism(ear, earLow, earTop);
    const mirrored = prism(
      ear.map(([x, y]) => [-x, y] as const),
      earLow,
      earTop,
    );
    return [
      latheArc(profile, from + PARTING_RAD, from + Math.PI - PARTING_RAD, { place }),
      turned(earBody, from),
      turned(mirrored, from),
    ];
  };
  const bolt = (x: number): Solid => {
    const z = (earLow + earTop) / 2;
    const at: Vec3 = [x, 0, z];
    return join(
      moved(alongY(ring(0, d.boltOdM / 2, -0.021, 0.0118, 14)), at),
      moved(alongY(prism(acrossFlats(6, d.boltAcrossFlatsM), 0.0119, 0.0185)), at),
    );
  };
  // Clockwise as one looks at the head.
  const turns = (x: number, by: Joint['by']): Joint => ({
    by,
    axis: [0, -1, 0],
    at: [x, 0, (earLow + earTop) / 2],
    perUnit: 2 * Math.PI,
  });
  return [
    { name: 'halves', stuff: 'steel', cut: true, body: join(...half(0), ...half(Math.PI)) },
    { name: 'leftBolt', stuff: 'bright', cut: true, body: bolt(-0.07), joint: turns(-0.07, 'leftBoltTurns') },
    { name: 'rightBolt', stuff: 'bright', cut: true, body: bolt(0.07), joint: turns(0.07, 'rightBoltTurns') },
  ];
};
