import type { SceneView } from './describe/view.ts';
import type { Vec3 } from './shape/solid.ts';

export const viewNames = [
  'followTheWork',
  'wholeRig',
  'teeAndBore',
  'stack',
  'holeFromAbove',
  'sightCap',
] as const;
export type ViewName = (typeof viewNames)[number];

export interface Viewpoint {
  /** Direction from the target to the eye. */
  readonly eye: Vec3;
  readonly target: Vec3;
  /** Height and width of what must be in the picture, m: the distance follows from them. */
  readonly tallM: number;
  readonly wideM: number;
  /** Distance to stand off, m, where it is given by the place: the field of view follows. */
  readonly fromM?: number;
  /** Cut open; whole, as a crew sees it; or down the bore by lamp through the window. */
  readonly as: 'section' | 'whole' | 'sightCap';
}

/** Where to stand for each named view. It turns with the section plane. */
export function viewpoint(name: ViewName, view: SceneView, sectionRad = 0): Viewpoint {
  const place = facing(name, view);
  if (place.as !== 'section') return place;
  const [c, s] = [Math.cos(sectionRad), Math.sin(sectionRad)];
  const [x, y, z] = place.eye;
  const [tx, ty, tz] = place.target;
  return { ...place, eye: [c * x - s * y, s * x + c * y, z], target: [c * tx - s * ty, s * tx + c * ty, tz] };
}

const section = (eye: Vec3, target: Vec3, tallM: number, wideM = tallM * 0.8): Viewpoint => ({
  eye,
  target,
  tallM,
  wideM,
  as: 'section',
});

/** As seen with the section across the main. */
function facing(name: ViewName, view: SceneView): Viewpoint {
  const { marks, hole, work } = view;
  const { topZM, highestZM, bossZM } = marks;
  switch (name) {
    case 'followTheWork': {
      if (work === null) return facing('wholeRig', view);
      if (work.as === 'sightCap') return facing('sightCap', view);
      const eye = work.eye ?? (work.as === 'whole' ? [1, -0.55, 0.5] : [1, -0.24, 0.15]);
      return { eye, target: work.target, tallM: work.tallM, wideM: work.tallM, as: work.as };
    }
    case 'wholeRig': {
      const low = -2 * hole.main.radiusM - 0.04;
      const tall = Math.max(highestZM + 0.03 - low, 0.34);
      return section([1, -0.34, 0.16], [0, 0.03, low + tall / 2], tall * 1.06);
    }
    case 'teeAndBore':
      return section([1, -0.22, 0.14], [0, 0.02, bossZM * 0.45], 0.26);
    case 'stack': {
      const from = bossZM - 0.03;
      const to = Math.max(topZM, bossZM + 0.1) + 0.04;
      return section([1, -0.28, 0.16], [0, 0, (from + to) / 2], (to - from) * 1.1);
    }
    case 'holeFromAbove':
      return { eye: [0.32, 0, 1], target: [0, 0, bossZM * 0.5], tallM: 1.2, wideM: 1.5, as: 'whole' };
    case 'sightCap':
      return downTheBore(view);
  }
}

/** The eye is at the window's inner face. */
const WINDOW_ABOVE_SEAT_M = 0.02;

/** From just under the window, straight down, wide enough for the rig's own bore at the window. */
function downTheBore({ marks, items }: SceneView): Viewpoint {
  const cap = items.find((i) => i.kind === 'sightCap');
  const eyeZM = cap
    ? cap.position[2] + WINDOW_ABOVE_SEAT_M
    : Math.max(marks.topZM, marks.bossZM + 0.1) + 0.06;
  const target: Vec3 = [0, 0, marks.boreFloorZM];
  const fromM = eyeZM - marks.boreFloorZM;
  return { eye: [0.0006, 0, 1], target, tallM: SIGHT_M, wideM: SIGHT_M, fromM, as: 'sightCap' };
}

/** How much is seen across, m, at the depth of the coupling. */
const SIGHT_M = 0.075;
