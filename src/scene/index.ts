/** The cutaway: describes a rig's state as places and turns, draws it, and says what a hand on the picture asks for. */
export { createScene } from './createScene.ts';
export type { RigScene, SceneOptions, SceneStats, Tier } from './rigScene.ts';
export type { Handle } from './draw/handles.ts';
export { describe } from './describe.ts';
export { nothingShown } from './describe/view.ts';
export type {
  CableView,
  CellGas,
  ChainView,
  DetailView,
  FlowView,
  FluidView,
  HoleView,
  GasView,
  ItemView,
  LinkGas,
  SceneView,
  Shown,
  SizeView,
  WorkView,
} from './describe/view.ts';
export { shownOf, type GasTruth } from './shown.ts';
export type { Intent } from './intents.ts';
export { gripOf, readDrag, type Grip } from './intents.ts';
export { bubblesPerS, BUBBLES_FROM_MOL_PER_S, dotsAt, particlesPerS } from './particles.ts';
export { palettes, type Theme } from './palette.ts';
export { gasColour, legend, SCALE_TOP_GAUGE_PA, type LegendStop } from './pressureScale.ts';
export { viewNames, viewpoint, type ViewName, type Viewpoint } from './views.ts';
export { shapes } from './pieces/index.ts';
export type { Part, ShapeSpec } from './pieces/part.ts';
export { toGeometry } from './shape/geometry.ts';
