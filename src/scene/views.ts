import type { SceneView } from './describe/view.ts';
import type { Vec3 } from './shape/solid.ts';

export const viewNames = ['wholeRig', 'teeAndBore', 'stack', 'holeFromAbove', 'sightCap'] as const;
export type ViewName = (typeof viewNames)[number];

export interface Viewpoint {
  readonly eye: Vec3;
  readonly target: Vec3;
  /** Height of what must be in the picture, m: the distance follows from it. */
  readonly tallM: number;
  /** The section is laid aside: one looks from where a crew would. */
  readonly uncut: boolean;
}

/** Where to stand for each named view. `eye` gives the direction; how far off follows from `tallM`. It turns with the section plane. */
export function viewpoint(name: ViewName, view: SceneView, sectionRad = 0): Viewpoint {
  const place = facing(name, view);
  if (place.uncut) return place;
  const [c, s] = [Math.cos(sectionRad), Math.sin(sectionRad)];
  const [x, y, z] = place.eye;
  const [tx, ty, tz] = place.target;
  return { ...place, eye: [c * x - s * y, s * x + c * y, z], target: [c * tx - s * ty, s * tx + c * ty, tz] };
}

/** As seen with the section across the main. */
function facing(name: ViewName, { marks, hole }: SceneView): Viewpoint {
  const { topZM, bossZM, ballZM } = marks;
  const low = hole.floorZM + 0.16;
  switch (name) {
    case 'wholeRig': {
      const tall = topZM + 0.1 - low;
      return { eye: [1, -0.34, 0.2], target: [0, 0, low + tall / 2], tallM: tall * 1.06, uncut: false };
    }
    case 'teeAndBore':
      return { eye: [1, -0.22, 0.14], target: [0, 0.02, bossZM * 0.45], tallM: 0.26, uncut: false };
    case 'stack': {
      const from = bossZM - 0.03;
      const to = Math.max(topZM, bossZM + 0.2) + 0.05;
      return {
        eye: [1, -0.28, 0.16],
        target: [0, 0, (from + to) / 2],
        tallM: (to - from) * 1.12,
        uncut: false,
      };
    }
    case 'holeFromAbove':
      return { eye: [0.2, 0, 1], target: [0, 0, bossZM], tallM: 1.25, uncut: true };
    case 'sightCap': {
      const eyeZ = Math.max(topZM, (ballZM ?? bossZM) + 0.1) + 0.08;
      return { eye: [0.0006, 0, 1], target: [0, 0, bossZM], tallM: (eyeZ - bossZM) * 0.3, uncut: true };
    }
  }
}
