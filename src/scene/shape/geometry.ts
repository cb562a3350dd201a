import { BufferAttribute, BufferGeometry, Mesh, type Object3D } from 'three';
import type { Solid } from './solid.ts';

/** Edges whose faces meet at more than this are drawn as lines and not smoothed over. */
const CREASE_COS = Math.cos((32 * Math.PI) / 180);
/** An edge that is not drawn is pushed this far away in the line shader's coordinates. */
const NO_EDGE = 60;

/**
 * A solid as a drawable: every triangle has its own corners, normals smoothed except over creases, and `rim`
 * coordinates in which the shader finds the drawn edges.
 */
export function toGeometry({ points, corners }: Solid): BufferGeometry {
  const triangles = corners.length / 3;
  const faceNormals = new Float32Array(triangles * 3);
  const areaWeighted = new Float64Array(triangles * 3);
  const position = new Float32Array(triangles * 9);
  for (let t = 0; t < triangles; t++) {
    const p = [0, 1, 2].map((k) => corners[t * 3 + k] * 3);
    for (let k = 0; k < 3; k++) for (let x = 0; x < 3; x++) position[t * 9 + k * 3 + x] = points[p[k] + x];
    const u = [0, 1, 2].map((x) => points[p[1] + x] - points[p[0] + x]);
    const v = [0, 1, 2].map((x) => points[p[2] + x] - points[p[0] + x]);
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const length = Math.hypot(n[0], n[1], n[2]) || 1;
    for (let x = 0; x < 3; x++) {
      faceNormals[t * 3 + x] = n[x] / length;
      areaWeighted[t * 3 + x] = n[x];
    }
  }
  const cosBetween = (a: number, b: number) =>
    faceNormals[a * 3] * faceNormals[b * 3] +
    faceNormals[a * 3 + 1] * faceNormals[b * 3 + 1] +
    faceNormals[a * 3 + 2] * faceNormals[b * 3 + 2];

  const around = new Map<number, number[]>();
  const across = new Map<string, number[]>();
  const edgeKey = (a: number, b: number) => (a < b ? `${a},${b}` : `${b},${a}`);
  for (let t = 0; t < triangles; t++) {
    for (let k = 0; k < 3; k++) {
      const a = corners[t * 3 + k];
      const b = corners[t * 3 + ((k + 1) % 3)];
      push(around, a, t);
      push(across, edgeKey(a, b), t);
    }
  }
  const normal = new Float32Array(triangles * 9);
  const rim = new Float32Array(triangles * 9);
  for (let t = 0; t < triangles; t++) {
    for (let k = 0; k < 3; k++) {
      const sum = [0, 0, 0];
      for (const other of around.get(corners[t * 3 + k]) ?? []) {
        if (cosBetween(t, other) < CREASE_COS) continue;
        for (let x = 0; x < 3; x++) sum[x] += areaWeighted[other * 3 + x];
      }
      const length = Math.hypot(sum[0], sum[1], sum[2]) || 1;
      for (let x = 0; x < 3; x++) normal[t * 9 + k * 3 + x] = sum[x] / length;
      // The k-th rim coordinate is 1 at corner k and 0 along the edge opposite to it.
      rim[t * 9 + k * 3 + k] = 1;
    }
    for (let k = 0; k < 3; k++) {
      const a = corners[t * 3 + ((k + 1) % 3)];
      const b = corners[t * 3 + ((k + 2) % 3)];
      const faces = across.get(edgeKey(a, b)) ?? [];
      const drawn = faces.length < 2 || cosBetween(faces[0], faces[1]) < CREASE_COS;
      if (!drawn) for (let corner = 0; corner < 3; corner++) rim[t * 9 + corner * 3 + k] += NO_EDGE;
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(position, 3));
  geometry.setAttribute('normal', new BufferAttribute(normal, 3));
  geometry.setAttribute('rim', new BufferAttribute(rim, 3));
  geometry.userData.shared = sharedCorners(corners, normal);
  geometry.computeBoundingSphere();
  return geometry;
}

/** For each corner the first one with the same place and normal: where no edges are drawn, it does for all of them. */
function sharedCorners(corners: ArrayLike<number>, normal: Float32Array): BufferAttribute {
  const firsts = new Map<string, number>();
  const index = new Uint32Array(corners.length);
  for (let i = 0; i < corners.length; i++) {
    const key = `${corners[i]},${normal[i * 3]},${normal[i * 3 + 1]},${normal[i * 3 + 2]}`;
    const first = firsts.get(key) ?? i;
    firsts.set(key, first);
    index[i] = first;
  }
  return new BufferAttribute(index, 1);
}

/** Edges need every triangle's own corners; without them corners are shared, and worked out once. */
export function shareCorners(root: Object3D, shared: boolean): void {
  root.traverse((object) => {
    if (!(object instanceof Mesh)) return;
    const geometry = object.geometry as BufferGeometry;
    const { shared: index } = geometry.userData as { shared?: BufferAttribute };
    if (index) geometry.setIndex(shared ? index : null);
  });
}

function push<K>(map: Map<K, number[]>, key: K, value: number): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
