import { addPoint, addQuad, empty, type Solid, type Vec3 } from './solid.ts';
import { triangulate } from './polygon.ts';

/** Radius and height, m. */
export type RZ = readonly [r: number, z: number];

export interface LatheOptions {
  /** Facets in a full turn. */
  readonly facets?: number;
  /** Where a profile's point really goes at an angle: for ends that follow another surface. */
  readonly place?: (r: number, angleRad: number, z: number, index: number) => Vec3;
}

export const FACETS = 40;

/** Area of a plane polygon, positive when counter-clockwise. */
export function signedArea(polygon: readonly (readonly [number, number])[]): number {
  let twice = 0;
  for (let i = 0; i < polygon.length; i++) {
    const [x1, y1] = polygon[i];
    const [x2, y2] = polygon[(i + 1) % polygon.length];
    twice += x1 * y2 - x2 * y1;
  }
  return twice / 2;
}

const plain = (r: number, a: number, z: number): Vec3 => [r * Math.cos(a), r * Math.sin(a), z];
const onAxis = (r: number): boolean => r < 1e-9;

/** Turn a closed profile of radius and height once round the z axis. The profile may run either way. */
export function lathe(profile: readonly RZ[], options: LatheOptions = {}): Solid {
  const facets = options.facets ?? FACETS;
  const place = options.place ?? plain;
  const rows = signedArea(profile) > 0 ? profile : [...profile].reverse();
  const solid = empty();
  const rings = rows.map(([r, z], i) =>
    onAxis(r)
      ? [addPoint(solid, ...place(0, 0, z, i))]
      : Array.from({ length: facets }, (_, k) =>
          addPoint(solid, ...place(r, (2 * Math.PI * k) / facets, z, i)),
        ),
  );
  for (let i = 0; i < rings.length; i++) {
    const a = rings[i];
    const b = rings[(i + 1) % rings.length];
    if (a.length === 1 && b.length === 1) continue;
    for (let k = 0; k < facets; k++) {
      const [k0, k1] = [k, (k + 1) % facets];
      addQuad(solid, a[k0 % a.length], a[k1 % a.length], b[k1 % b.length], b[k0 % b.length]);
    }
  }
  return solid;
}

/** Turn a profile through part of a turn and close both ends. No point of it may lie on the axis. */
export function latheArc(
  profile: readonly RZ[],
  fromRad: number,
  toRad: number,
  options: LatheOptions = {},
): Solid {
  const steps = Math.max(2, Math.ceil(((options.facets ?? FACETS) * (toRad - fromRad)) / (2 * Math.PI)));
  const place = options.place ?? plain;
  const rows = signedArea(profile) > 0 ? profile : [...profile].reverse();
  const solid = empty();
  const rings = rows.map(([r, z], i) =>
    Array.from({ length: steps + 1 }, (_, k) =>
      addPoint(solid, ...place(r, fromRad + ((toRad - fromRad) * k) / steps, z, i)),
    ),
  );
  for (let i = 0; i < rings.length; i++) {
    const a = rings[i];
    const b = rings[(i + 1) % rings.length];
    for (let k = 0; k < steps; k++) addQuad(solid, a[k], a[k + 1], b[k + 1], b[k]);
  }
  for (const [p, q, r] of triangulate(rows)) {
    solid.corners.push(rings[p][0], rings[q][0], rings[r][0]);
    solid.corners.push(rings[p][steps], rings[r][steps], rings[q][steps]);
  }
  return solid;
}

/** Plain ring, or disc when the inner radius is 0. */
export const ring = (innerR: number, outerR: number, z0: number, z1: number, facets?: number): Solid =>
  lathe(
    [
      [innerR, z0],
      [outerR, z0],
      [outerR, z1],
      [innerR, z1],
    ],
    { facets },
  );
