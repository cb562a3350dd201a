import { ShapeUtils, Vector2 } from 'three';

export type Point2 = readonly [number, number];

/** Triangles (counter-clockwise, as point indices) that fill a counter-clockwise outline with clockwise holes. */
export function triangulate(
  outline: readonly Point2[],
  holes: readonly (readonly Point2[])[] = [],
): number[][] {
  const vectors = (points: readonly Point2[]) => points.map(([x, y]) => new Vector2(x, y));
  return ShapeUtils.triangulateShape(vectors(outline), holes.map(vectors));
}

/** Regular polygon by its width across flats, a flat facing +x. */
export function acrossFlats(sides: number, widthM: number): Point2[] {
  const r = widthM / 2 / Math.cos(Math.PI / sides);
  return Array.from({ length: sides }, (_, k) => {
    const a = (2 * Math.PI * (k + 0.5)) / sides;
    return [r * Math.cos(a), r * Math.sin(a)] as const;
  });
}

export const circle = (radiusM: number, facets = 24, x = 0, y = 0): Point2[] =>
  Array.from({ length: facets }, (_, k) => {
    const a = (2 * Math.PI * k) / facets;
    return [x + radiusM * Math.cos(a), y + radiusM * Math.sin(a)] as const;
  });

export const rectangle = (x0: number, x1: number, y0: number, y1: number): Point2[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];
