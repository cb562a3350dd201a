import { Vector3 } from 'three';
import { addPoint, addQuad, empty, type Solid, type Vec3 } from './solid.ts';

/** A round bar along a path, ends closed flat; or a closed loop when `loop` is set. */
export function sweep(
  path: readonly Vec3[],
  radiusM: number,
  options: { facets?: number; loop?: boolean } = {},
): Solid {
  const facets = options.facets ?? 10;
  const solid = empty();
  const at = path.map((p) => new Vector3(...p));
  const n = at.length;
  const tangent = (i: number): Vector3 => {
    const before = options.loop ? at[(i - 1 + n) % n] : at[Math.max(0, i - 1)];
    const after = options.loop ? at[(i + 1) % n] : at[Math.min(n - 1, i + 1)];
    return after.clone().sub(before).normalize();
  };
  // A frame carried along without twist: each side vector is the last one made square to the new tangent.
  const first = tangent(0);
  let side = new Vector3(0, 0, 1).cross(first);
  if (side.lengthSq() < 1e-6) side = new Vector3(1, 0, 0).cross(first);
  side.normalize();
  const rings = at.map((centre, i) => {
    const t = tangent(i);
    side = side.clone().addScaledVector(t, -side.dot(t)).normalize();
    const up = t.clone().cross(side);
    return Array.from({ length: facets }, (_, k) => {
      const a = (2 * Math.PI * k) / facets;
      const p = centre
        .clone()
        .addScaledVector(side, radiusM * Math.cos(a))
        .addScaledVector(up, radiusM * Math.sin(a));
      return addPoint(solid, p.x, p.y, p.z);
    });
  });
  for (let i = 0; i + (options.loop ? 0 : 1) < n; i++) {
    const [a, b] = [rings[i], rings[(i + 1) % n]];
    for (let k = 0; k < facets; k++) {
      const l = (k + 1) % facets;
      addQuad(solid, a[k], a[l], b[l], b[k]);
    }
  }
  if (!options.loop) {
    const start = addPoint(solid, ...(path[0] as [number, number, number]));
    const end = addPoint(solid, ...(path[n - 1] as [number, number, number]));
    for (let k = 0; k < facets; k++) {
      const l = (k + 1) % facets;
      solid.corners.push(start, rings[0][l], rings[0][k], end, rings[n - 1][k], rings[n - 1][l]);
    }
  }
  return solid;
}
