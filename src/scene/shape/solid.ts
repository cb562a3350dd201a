/**
 * A closed body as bare numbers: points and the corners of its triangles, counter-clockwise seen from outside.
 * Everything the section shows must be such a body, because the inside of metal is told by its back faces.
 */
export interface Solid {
  /** x, y, z of each point, m. */
  readonly points: number[];
  /** Three point indices a triangle. */
  readonly corners: number[];
}

export type Vec3 = readonly [number, number, number];

export const empty = (): Solid => ({ points: [], corners: [] });

export function addPoint(solid: Solid, x: number, y: number, z: number): number {
  solid.points.push(x, y, z);
  return solid.points.length / 3 - 1;
}

/** Two triangles, or one or none where corners coincide. */
export function addQuad(solid: Solid, a: number, b: number, c: number, d: number): void {
  if (a !== b && b !== c && a !== c) solid.corners.push(a, b, c);
  if (a !== c && c !== d && a !== d) solid.corners.push(a, c, d);
}

/** Several bodies as one; they may not overlap, and should not touch. */
export function join(...solids: readonly Solid[]): Solid {
  const out = empty();
  for (const s of solids) {
    const base = out.points.length / 3;
    for (const p of s.points) out.points.push(p);
    for (const c of s.corners) out.corners.push(base + c);
  }
  return out;
}

const mapped = (solid: Solid, to: (x: number, y: number, z: number) => Vec3): Solid => {
  const points: number[] = [];
  for (let i = 0; i < solid.points.length; i += 3) {
    points.push(...to(solid.points[i], solid.points[i + 1], solid.points[i + 2]));
  }
  return { points, corners: solid.corners };
};

export const moved = (solid: Solid, [dx, dy, dz]: Vec3): Solid =>
  mapped(solid, (x, y, z) => [x + dx, y + dy, z + dz]);

/** Turned about the z axis, rad. */
export function turned(solid: Solid, angleRad: number): Solid {
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  return mapped(solid, (x, y, z) => [c * x - s * y, s * x + c * y, z]);
}

/** Lay a body made along z along another axis, keeping its hand. */
export const alongX = (solid: Solid): Solid => mapped(solid, (x, y, z) => [z, x, y]);
export const alongY = (solid: Solid): Solid => mapped(solid, (x, y, z) => [y, z, x]);
/** Turned half round the x axis: what was up is down. */
export const upsideDown = (solid: Solid): Solid => mapped(solid, (x, y, z) => [x, -y, -z]);
