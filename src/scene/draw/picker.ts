import {
  InstancedMesh,
  Raycaster,
  Vector2,
  type Camera,
  type Intersection,
  type Object3D,
  type Vector4,
} from 'three';

export interface Picked {
  readonly id: string;
  readonly part: string;
  readonly distanceM: number;
}

const ray = new Raycaster();

/** The part under a point of the picture (−1 to 1 both ways), as it is seen: what is cut away is not there. */
export function pickAt(
  x: number,
  y: number,
  camera: Camera,
  roots: readonly Object3D[],
  plane: Vector4 | null,
): Picked | null {
  ray.setFromCamera(new Vector2(x, y), camera);
  const hits = roots
    .flatMap((root) => ray.intersectObject(root, true))
    .sort((a, b) => a.distance - b.distance);
  const seen = hits.find((hit) => hit.object.visible && !(plane && isCutAway(hit, plane)));
  return seen ? { ...named(seen), distanceM: seen.distance } : null;
}

/** Only sectioned parts lose their near side; rods, bolts and handles are drawn whole. */
export function isCutAway(hit: Pick<Intersection, 'point' | 'object'>, plane: Vector4): boolean {
  if (hit.object.userData.cut !== true) return false;
  return plane.x * hit.point.x + plane.y * hit.point.y + plane.z * hit.point.z + plane.w < 0;
}

function named(hit: Intersection): { id: string; part: string } {
  const { id, part, targets } = hit.object.userData as { id?: string; part?: string; targets?: string[] };
  if (hit.object instanceof InstancedMesh && targets && hit.instanceId !== undefined) {
    const [chain, side] = (targets[hit.instanceId] ?? '').split('/');
    return { id: chain, part: side ?? 'link' };
  }
  return { id: id ?? '', part: part ?? '' };
}
