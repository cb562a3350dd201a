import { triangulate, type Point2 } from './polygon.ts';
import type { Solid, Vec3 } from './solid.ts';

/** Two directions that span a plane face, right then up as seen from outside. */
export interface Face {
  readonly right: Vec3;
  readonly up: Vec3;
}

const along = ({ points }: Solid, i: number, [x, y, z]: Vec3): number =>
  points[3 * i] * x + points[3 * i + 1] * y + points[3 * i + 2] * z;

const area = (loop: readonly Point2[]): number =>
  loop.reduce((sum, [x, y], i) => {
    const [nx, ny] = loop[(i + 1) % loop.length];
    return sum + x * ny - nx * y;
  }, 0);

/**
 * Fill a plane face between points a solid already has: an outline and holes in it, each turned as it must be.
 * Faces that share points share edges, so that a body put together from them is closed.
 */
export function fill(
  solid: Solid,
  face: Face,
  outline: readonly number[],
  holes: readonly (readonly number[])[] = [],
): void {
  const flat = (loop: readonly number[]): Point2[] =>
    loop.map((i) => [along(solid, i, face.right), along(solid, i, face.up)]);
  const turned = (loop: readonly number[], positive: boolean): number[] =>
    area(flat(loop)) > 0 === positive ? [...loop] : [...loop].reverse();
  const loops = [turned(outline, true), ...holes.map((h) => turned(h, false))];
  const all = loops.flat();
  const [outer, ...inner] = loops.map(flat);
  for (const [a, b, c] of triangulate(outer, inner)) solid.corners.push(all[a], all[b], all[c]);
}
