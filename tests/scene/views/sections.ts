import { Mesh, PerspectiveCamera, Raycaster, Vector2, Vector3, Vector4, type Object3D } from 'three';
import { Chains } from '../../../src/scene/draw/chains.ts';
import { Ground } from '../../../src/scene/draw/ground.ts';
import { Items } from '../../../src/scene/draw/items.ts';
import { Materials } from '../../../src/scene/draw/materials.ts';
import { isCutAway } from '../../../src/scene/draw/picker.ts';
import { palettes, viewpoint, type SceneView, type ViewName } from '../../../src/scene/index.ts';
import type { Stuff } from '../../../src/scene/pieces/part.ts';

/** A point of the picture at which solid geometry says that a cut face is seen, and what it is cut through. */
export interface CutPoint {
  readonly x: number;
  readonly y: number;
  readonly stuff: Stuff;
}

/** Finds the cut faces by rays through the bodies alone, without a GPU: a back face met first is the inside of metal. */
export function cutPoints(
  view: SceneView,
  name: ViewName,
  width: number,
  height: number,
  step: number,
): CutPoint[] {
  const to = viewpoint(name, view);
  if (to.as !== 'section') return [];
  const materials = new Materials('light');
  const [items, chains, ground] = [new Items(materials), new Chains(materials), new Ground(materials)];
  items.sync(view.items);
  chains.sync(view.chains);
  ground.sync(view.hole, view.cables);
  const roots: Object3D[] = [items.root, chains.root, ground.root];
  for (const root of roots) root.updateMatrixWorld(true);
  const aspect = width / height;
  const camera = new PerspectiveCamera(26, aspect, 0.01, 30);
  const target = new Vector3(...(to.target as [number, number, number]));
  const half = Math.tan((13 * Math.PI) / 180);
  const off = Math.max(to.tallM, to.wideM / aspect) / 2 / half;
  camera.up.set(0, 0, 1);
  camera.position
    .copy(target)
    .addScaledVector(new Vector3(...(to.eye as [number, number, number])).normalize(), off);
  camera.lookAt(target);
  camera.updateMatrixWorld(true);
  const plane = new Vector4(-1, 0, 0, 0);
  const ray = new Raycaster();
  const found: CutPoint[] = [];
  for (let y = step; y < height; y += step) {
    for (let x = step; x < width; x += step) {
      ray.setFromCamera(new Vector2((2 * (x + 0.5)) / width - 1, 1 - (2 * (y + 0.5)) / height), camera);
      const hit = roots
        .flatMap((root) => ray.intersectObject(root, true))
        .sort((a, b) => a.distance - b.distance)
        .find((one) => !isCutAway(one, plane));
      if (!hit?.face || !(hit.object instanceof Mesh) || hit.object.userData.cut !== true) continue;
      const outward = hit.face.normal.clone().transformDirection(hit.object.matrixWorld);
      const { stuff } = hit.object.userData as { stuff?: Stuff };
      if (stuff !== undefined && outward.dot(ray.ray.direction) > 0) found.push({ x, y, stuff });
    }
  }
  for (const part of [items, chains, ground, materials]) part.dispose();
  return found;
}

/** Whether a colour (0 to 255 a channel) is one a cut through this stuff may have: its face, its hatching, or a blend. */
export function isCutColour(stuff: Stuff, [r, g, b]: readonly [number, number, number]): boolean {
  const { stuffs, line } = palettes.light;
  const { face, hatch } = stuffs[stuff];
  const seen = [r / 255, g / 255, b / 255];
  return [hatch, line].some((other) => {
    const along = face.map((c, i) => other[i] - c);
    const length = along.reduce((sum, c) => sum + c * c, 0);
    const t = Math.max(
      0,
      Math.min(1, along.reduce((sum, c, i) => sum + c * (seen[i] - face[i]), 0) / length),
    );
    return Math.hypot(...face.map((c, i) => c + along[i] * t - seen[i])) < 0.05;
  });
}
