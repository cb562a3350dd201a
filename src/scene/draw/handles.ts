import { InstancedMesh, Matrix4, Mesh, Vector3, type Camera, type Object3D } from 'three';
import { graspedPart, gripOf, type Grip } from '../intents.ts';
import { targetOf } from './gestures.ts';
import type { Picked } from './picker.ts';

/** A part that can be taken hold of as the picture stands, and a point of it that nothing hides. */
export interface Handle {
  readonly target: string;
  readonly grip: Grip;
  /** CSS pixels from the canvas's corner. */
  readonly x: number;
  readonly y: number;
}

interface Sight {
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
  /** So much of the foot is covered, CSS pixels. */
  readonly covered: number;
  readonly kindOf: (id: string) => string;
  /** What is under a point of the picture, −1 to 1 both ways. */
  readonly pick: (x: number, y: number) => Picked | null;
}

/** Faces of a part that are tried, and how many of them by looking. */
const MOST_FACES = 90;
const MOST_LOOKS = 12;
/** Nothing is taken hold of nearer to the picture's rim than this share of its half. */
const RIM = 0.96;

/** Every part in sight that has a grip, each once, at the seen point nearest to its middle on the screen. */
export function handlesIn(roots: readonly Object3D[], sight: Sight): Handle[] {
  const found = new Map<string, Handle>();
  for (const root of roots) {
    root.traverse((object) => {
      if (!(object instanceof Mesh) || !object.visible) return;
      for (const { id, part, matrix } of partsOf(object)) {
        const kind = sight.kindOf(id);
        const grip = gripOf(kind, graspedPart(kind, part));
        const target = targetOf({ id, part });
        if (grip === null || found.has(target)) continue;
        const at = seenPoint(object, matrix, target, sight);
        if (at) {
          const [x, y] = [((at.x + 1) / 2) * sight.width, ((1 - at.y) / 2) * sight.height];
          found.set(target, { target, grip, x, y });
        }
      }
    });
  }
  return [...found.values()];
}

function partsOf(mesh: Mesh): { id: string; part: string; matrix: Matrix4 }[] {
  const { id, part, targets } = mesh.userData as { id?: string; part?: string; targets?: string[] };
  if (!(mesh instanceof InstancedMesh)) return [{ id: id ?? '', part: part ?? '', matrix: mesh.matrixWorld }];
  return (targets ?? []).flatMap((target, i) => {
    const [chain, side] = target.split('/');
    if (side === undefined) return [];
    const matrix = new Matrix4();
    mesh.getMatrixAt(i, matrix);
    return [{ id: chain, part: side, matrix: matrix.premultiply(mesh.matrixWorld) }];
  });
}

function seenPoint(mesh: Mesh, matrix: Matrix4, target: string, sight: Sight): Vector3 | null {
  const foot = (2 * sight.covered) / sight.height - RIM;
  const points = middlesOfFaces(mesh)
    .map((point) => point.applyMatrix4(matrix).project(sight.camera))
    .filter(({ x, y, z }) => Math.abs(x) < RIM && y < RIM && y > foot && Math.abs(z) < 1);
  if (points.length === 0) return null;
  const middle = points.reduce((sum, p) => sum.add(p), new Vector3()).divideScalar(points.length);
  const away = (p: Vector3): number => Math.hypot(p.x - middle.x, p.y - middle.y);
  points.sort((a, b) => away(a) - away(b));
  const every = Math.max(1, Math.floor(points.length / MOST_LOOKS));
  for (let i = 0; i < points.length; i += every) {
    const picked = sight.pick(points[i].x, points[i].y);
    if (picked && targetOf(picked) === target) return points[i];
  }
  return null;
}

function middlesOfFaces({ geometry }: Mesh): Vector3[] {
  const position = geometry.getAttribute('position');
  const corner = (n: number): number => geometry.index?.getX(n) ?? n;
  const faces = Math.floor((geometry.index?.count ?? position.count) / 3);
  const every = Math.max(1, Math.floor(faces / MOST_FACES));
  const middles: Vector3[] = [];
  for (let face = 0; face < faces; face += every) {
    const middle = new Vector3();
    for (let k = 0; k < 3; k++) middle.add(new Vector3().fromBufferAttribute(position, corner(3 * face + k)));
    middles.push(middle.divideScalar(3));
  }
  return middles;
}
