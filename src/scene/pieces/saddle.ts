import { pieces } from '../../core/catalogue/index.ts';
import { lathe, type RZ } from '../shape/lathe.ts';
import { circle, type Point2 } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { HAIR, spigotAbove, type PieceShape } from './part.ts';

/** Underside of the arms above the seat face, m: the tensioners hook here. */
export const ARM_UNDERSIDE_M = -0.002;

/** Body with the recess below and a spigot above, and the plate whose four slots take the tensioners. Origin on the seat face. */
export const saddle: PieceShape = () => {
  const d = pieces.saddle.dims();
  const top = d.heightM - d.recessDepthM;
  const body = d.bodyOdM / 2;
  const profile: RZ[] = [
    [d.boreM / 2, 0],
    [d.recessOdM / 2, 0],
    [d.recessOdM / 2, -d.recessDepthM],
    [body - 0.001, -d.recessDepthM],
    [body, -d.recessDepthM + 0.001],
    [body, 0.03],
    [0.049, 0.036],
    ...spigotAbove(top),
  ];
  const [x, y] = [d.chainHalfSpanM, d.legHalfSpanM];
  const slot = 0.0075;
  const [edgeX, edgeY] = [x + 0.016, y + 0.012];
  // One quarter of the outline, mirrored four times: waist, arm, slot open to the side, corner.
  const quarter: Point2[] = [
    [0.03, body + 0.0065],
    [x - slot - 0.008, edgeY],
    [x - slot, edgeY],
    [x - slot, y],
    [x, y - slot],
    [x + slot, y],
    [x + slot, edgeY],
    [edgeX, edgeY],
    [edgeX, y - 0.02],
    [body + 0.012, 0.012],
  ];
  const first = [...quarter].reverse();
  const outline: Point2[] = [
    ...first,
    ...quarter.map(([px, py]) => [-px, py] as const),
    ...first.map(([px, py]) => [-px, -py] as const),
    ...quarter.map(([px, py]) => [px, -py] as const),
  ];
  const plate = prism(outline, ARM_UNDERSIDE_M, ARM_UNDERSIDE_M + d.armThickM, [circle(body + HAIR, 40)]);
  return [
    { name: 'body', stuff: 'steel', cut: true, body: lathe(profile) },
    { name: 'arms', stuff: 'steel', cut: true, body: plate },
  ];
};
