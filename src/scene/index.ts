export { shapes } from './pieces/index.ts';
export type { Part, ShapeSpec } from './pieces/part.ts';
export { toGeometry } from './shape/geometry.ts';
