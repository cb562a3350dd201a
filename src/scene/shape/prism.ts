import { addPoint, addQuad, empty, type Solid } from './solid.ts';
import { signedArea } from './lathe.ts';
import { rectangle, triangulate, type Point2 } from './polygon.ts';

const turnedTo = (polygon: readonly Point2[], counterClockwise: boolean): Point2[] =>
  signedArea(polygon) > 0 === counterClockwise ? [...polygon] : [...polygon].reverse();

/** A plane outline with holes, raised from z0 to z1. */
export function prism(
  outline: readonly Point2[],
  z0: number,
  z1: number,
  holes: readonly (readonly Point2[])[] = [],
): Solid {
  const outer = turnedTo(outline, true);
  const inner = holes.map((h) => turnedTo(h, false));
  const solid = empty();
  const all = [outer, ...inner];
  const low = all.map((loop) => loop.map(([x, y]) => addPoint(solid, x, y, z0)));
  const high = all.map((loop) => loop.map(([x, y]) => addPoint(solid, x, y, z1)));
  const lowFlat = low.flat();
  const highFlat = high.flat();
  for (const [a, b, c] of triangulate(outer, inner)) {
    solid.corners.push(highFlat[a], highFlat[b], highFlat[c]);
    solid.corners.push(lowFlat[a], lowFlat[c], lowFlat[b]);
  }
  all.forEach((loop, l) => {
    for (let i = 0; i < loop.length; i++) {
      const j = (i + 1) % loop.length;
      addQuad(solid, low[l][i], low[l][j], high[l][j], high[l][i]);
    }
  });
  return solid;
}

export const box = (x0: number, x1: number, y0: number, y1: number, z0: number, z1: number): Solid =>
  prism(rectangle(x0, x1, y0, y1), z0, z1);
