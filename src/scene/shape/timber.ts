import { ring } from './lathe.ts';
import { box } from './prism.ts';
import { alongX, join, moved, type Solid, type Vec3 } from './solid.ts';

/** Sizes of the things that make a hole safe to stand in, m (all assumed). */
const LADDER = { halfWidthM: 0.19, railM: 0.018, rungM: 0.28, aboveGradeM: 0.95, footOutM: 0.3 };
const SHEET = { widthM: 0.23, thickM: 0.045, gapM: 0.11 };
/** Walings and struts stand at these shares of the depth, clear of who works at the tee. */
const WALING_LEVELS = [0.72, 0.94];

export interface HoleWalls {
  readonly halfXM: number;
  readonly halfYM: number;
  readonly slopeM: number;
  readonly floorZM: number;
  readonly gradeZM: number;
}

/** Tip a body about the x axis at the origin, rad: what was up leans toward −y. */
const tipped = (solid: Solid, angleRad: number): Solid => {
  const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
  const points: number[] = [];
  for (let i = 0; i < solid.points.length; i += 3) {
    const [x, y, z] = [solid.points[i], solid.points[i + 1], solid.points[i + 2]];
    points.push(x, c * y - s * z, s * y + c * z);
  }
  return { points, corners: solid.corners };
};

/** Ladder on the floor, leaning on the edge of the side away from the service, three rungs above grade. */
export function ladder({ halfXM, halfYM, slopeM, floorZM, gradeZM }: HoleWalls): Solid {
  const { halfWidthM: w, railM: r, rungM, aboveGradeM, footOutM } = LADDER;
  const rise = gradeZM - floorZM;
  const angle = Math.atan2(footOutM + slopeM, rise);
  const length = (rise + aboveGradeM) / Math.cos(angle);
  const rails = [-w, w].map((x) => box(x - r, x + r, -r * 1.4, r * 1.4, 0, length));
  const rungs: Solid[] = [];
  for (let z = rungM * 0.8; z < length - 0.1; z += rungM) {
    rungs.push(moved(alongX(ring(0, 0.014, -w + r + 0.0002, w - r - 0.0002, 10)), [0, 0, z]));
  }
  const foot: Vec3 = [-halfXM + 0.24, -halfYM + footOutM, floorZM + 0.002];
  return moved(tipped(join(...rails, ...rungs), angle), foot);
}

/** Upright sheets along both sides with walings, and struts between them at both ends; the service's way is left open. */
export function shoring({ halfXM, halfYM, floorZM, gradeZM }: HoleWalls): Solid {
  const parts: Solid[] = [];
  const face = halfYM - SHEET.thickM - 0.004;
  const level = (share: number) => floorZM + (gradeZM - floorZM) * share;
  for (const side of [-1, 1]) {
    const at = (x0: number, x1: number, near: number, far: number, z0: number, z1: number) =>
      box(x0, x1, side < 0 ? -far : near, side < 0 ? -near : far, z0, z1);
    for (let x = -halfXM + 0.03; x + SHEET.widthM < halfXM; x += SHEET.widthM + SHEET.gapM) {
      const acrossService = side > 0 && x < 0.03 && x + SHEET.widthM > -0.03;
      if (!acrossService) {
        parts.push(at(x, x + SHEET.widthM, face, face + SHEET.thickM, floorZM + 0.002, gradeZM + 0.12));
      }
    }
    for (const share of WALING_LEVELS) {
      parts.push(
        at(-halfXM + 0.02, halfXM - 0.02, face - 0.0752, face - 0.0002, level(share), level(share) + 0.1),
      );
    }
  }
  for (const x of [-halfXM + 0.16, halfXM - 0.16]) {
    for (const share of WALING_LEVELS) {
      const reach = face - 0.0754;
      parts.push(box(x - 0.045, x + 0.045, -reach, reach, level(share) + 0.004, level(share) + 0.094));
    }
  }
  return join(...parts);
}
