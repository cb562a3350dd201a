import { fill } from './faceted.ts';
import { addPoint, addQuad, empty, type Solid, type Vec3 } from './solid.ts';

export interface PitSize {
  readonly halfXM: number;
  readonly halfYM: number;
  /** How far the side walls lean out from floor to grade, m. */
  readonly slopeM: number;
  readonly wallM: number;
  readonly floorZM: number;
  readonly gradeZM: number;
  /** Pipes through the walls: the main along x through both ends, the service along +y through one side. */
  readonly main: { readonly radiusM: number; readonly zM: number };
  readonly service: { readonly radiusM: number; readonly zM: number };
}

const FACETS = 40;

/** A pit in a block of soil, open above, with a pipe right through its ends and one out through its side. */
export function pit(size: PitSize): Solid {
  const { halfXM, halfYM, slopeM, wallM, floorZM, gradeZM, main, service } = size;
  const solid = empty();
  const lowZ = floorZM - wallM * 0.6;
  const outX = halfXM + wallM;
  const outY = halfYM + slopeM + wallM;
  const corners = (x: number, y: number, z: number): number[] => [
    addPoint(solid, -x, -y, z),
    addPoint(solid, x, -y, z),
    addPoint(solid, x, y, z),
    addPoint(solid, -x, y, z),
  ];
  const low = corners(outX, outY, lowZ);
  const outer = corners(outX, outY, gradeZM);
  const rim = corners(halfXM, halfYM + slopeM, gradeZM);
  const floor = corners(halfXM, halfYM, floorZM);
  const circle = (at: (right: number, up: number) => Vec3, radius: number): number[] =>
    Array.from({ length: FACETS }, (_, k) => {
      const a = (2 * Math.PI * k) / FACETS;
      return addPoint(solid, ...at(radius * Math.cos(a), radius * Math.sin(a)));
    });
  const onMain = (x: number) => circle((r, u) => [x, r, main.zM + u], main.radiusM);
  const ends = [-1, 1].map((s) => ({ s, inner: onMain(s * halfXM), outer: onMain(s * outX) }));
  const lean = (z: number) => halfYM + (slopeM * (z - floorZM)) / (gradeZM - floorZM);
  const serviceIn = circle((r, u) => [r, lean(service.zM + u), service.zM + u], service.radiusM);
  const serviceOut = circle((r, u) => [r, outY, service.zM + u], service.radiusM);

  const X: Vec3 = [1, 0, 0];
  const Y: Vec3 = [0, 1, 0];
  const Z: Vec3 = [0, 0, 1];
  const back = (v: Vec3): Vec3 => [-v[0], -v[1], -v[2]];
  const wall = (a: readonly number[], b: readonly number[], i: number, j: number) => [a[i], a[j], b[j], b[i]];
  fill(solid, { right: X, up: back(Y) }, low);
  fill(solid, { right: X, up: Y }, outer, [rim]);
  fill(solid, { right: X, up: Y }, floor);
  // Outside, then inside: sides at −y and +y, ends at −x and +x.
  fill(solid, { right: X, up: Z }, wall(low, outer, 0, 1));
  fill(solid, { right: back(X), up: Z }, wall(low, outer, 2, 3), [serviceOut]);
  fill(solid, { right: back(Y), up: Z }, wall(low, outer, 3, 0), [ends[0].outer]);
  fill(solid, { right: Y, up: Z }, wall(low, outer, 1, 2), [ends[1].outer]);
  fill(solid, { right: back(X), up: Z }, wall(floor, rim, 0, 1));
  fill(solid, { right: X, up: Z }, wall(floor, rim, 2, 3), [serviceIn]);
  fill(solid, { right: Y, up: Z }, wall(floor, rim, 3, 0), [ends[0].inner]);
  fill(solid, { right: back(Y), up: Z }, wall(floor, rim, 1, 2), [ends[1].inner]);
  const tunnel = (from: readonly number[], to: readonly number[]) => {
    for (let k = 0; k < FACETS; k++) {
      const l = (k + 1) % FACETS;
      addQuad(solid, from[k], from[l], to[l], to[k]);
    }
  };
  // The wall of a bore looks inward; circles run counter-clockwise in (y, z), which is clockwise in (x, z) seen along y.
  tunnel(ends[0].inner, ends[0].outer);
  tunnel(ends[1].outer, ends[1].inner);
  tunnel(serviceIn, serviceOut);
  return solid;
}
