import { addPoint, addQuad, empty, type Solid } from './solid.ts';
import type { RZ } from './lathe.ts';

/** One point of the run's profile; the span to the next point may be pierced by the branch. */
export interface RunRow {
  readonly rz: RZ;
  /** Which wall it belongs to: decides the angles its points are taken at. */
  readonly wall: 'outer' | 'inner';
  readonly pierced?: boolean;
}

/** One ring of the branch: radius about its axis and distance out from the run's axis (which may depend on where). */
export interface BranchRow {
  readonly radiusM: number;
  readonly outM: number | ((x: number, z: number) => number);
}

export interface Ported {
  /** Closed profile, counter-clockwise in (r, z): up the outside, down the inside. */
  readonly run: readonly RunRow[];
  /** Radius of the branch where it meets the outer and the inner wall. */
  readonly outerBranchM: number;
  readonly innerBranchM: number;
  /** Rings from the outer wall's hole out and back to the inner wall's hole. */
  readonly branch: readonly BranchRow[];
  /** Facets round the branch (a multiple of four), and round the rest of the run. */
  readonly branchFacets?: number;
  readonly restFacets?: number;
}

interface Wall {
  readonly radiusM: number;
  readonly branchM: number;
  readonly angles: readonly number[];
}

/**
 * A body of revolution about z with one round branch along +y at z = 0, made without cutting anything: both walls
 * take their columns at the angles where the branch's own facets meet them, so the joint curve is shared exactly.
 */
export function ported(shape: Ported): Solid {
  const m = shape.branchFacets ?? 28;
  const half = m / 2;
  const rest = shape.restFacets ?? 22;
  const wallOf = (name: 'outer' | 'inner'): Wall => {
    const row = shape.run.find((r) => r.pierced && r.wall === name);
    if (!row) throw new Error(`The ${name} wall is not pierced by the branch.`);
    const radiusM = row.rz[0];
    const branchM = name === 'outer' ? shape.outerBranchM : shape.innerBranchM;
    const reach = Math.asin(branchM / radiusM);
    const angles: number[] = [];
    for (let k = 0; k <= half; k++)
      angles.push(Math.asin((branchM / radiusM) * Math.cos((2 * Math.PI * k) / m)));
    for (let j = 1; j < rest; j++) angles.push(-reach - ((2 * Math.PI - 2 * reach) * j) / rest);
    return { radiusM, branchM, angles };
  };
  const walls = { outer: wallOf('outer'), inner: wallOf('inner') };
  const solid = empty();
  const columns = half + rest;
  const rings = shape.run.map(({ rz: [r, z], wall }) =>
    walls[wall].angles.map((a) => addPoint(solid, r * Math.sin(a), r * Math.cos(a), z)),
  );
  const holes: Partial<Record<'outer' | 'inner', number[]>> = {};

  shape.run.forEach((row, i) => {
    const a = rings[i];
    const b = rings[(i + 1) % rings.length];
    if (!row.pierced) {
      strip(solid, a, b, columns);
      return;
    }
    const { radiusM, branchM, angles } = walls[row.wall];
    const side = (k: number, sign: number) => {
      const at = branchM * Math.sin((2 * Math.PI * k) / m) * sign;
      return addPoint(solid, radiusM * Math.sin(angles[k]), radiusM * Math.cos(angles[k]), at);
    };
    const high: number[] = [];
    const low: number[] = [];
    for (let k = 0; k < columns; k++) {
      const single = k === 0 || k >= half;
      const mid = single
        ? addPoint(solid, radiusM * Math.sin(angles[k]), radiusM * Math.cos(angles[k]), 0)
        : -1;
      high.push(single ? mid : side(k, 1));
      low.push(single ? mid : side(k, -1));
    }
    const upward = rings.length > 0 && shape.run[(i + 1) % shape.run.length].rz[1] > row.rz[1];
    strip(solid, a, upward ? low : high, columns);
    strip(solid, upward ? high : low, b, columns);
    holes[row.wall] = Array.from({ length: m }, (_, k) => (k <= half ? high[k] : low[m - k]));
  });

  const { outer, inner } = holes;
  if (!outer || !inner) throw new Error('Both walls must be pierced.');
  const between = shape.branch.map(({ radiusM, outM }) =>
    Array.from({ length: m }, (_, k) => {
      const a = (2 * Math.PI * k) / m;
      const [x, z] = [radiusM * Math.cos(a), radiusM * Math.sin(a)];
      return addPoint(solid, x, typeof outM === 'number' ? outM : outM(x, z), z);
    }),
  );
  const sequence = [outer, ...between, inner];
  for (let i = 0; i + 1 < sequence.length; i++) {
    const [a, b] = [sequence[i], sequence[i + 1]];
    for (let k = 0; k < m; k++) {
      const l = (k + 1) % m;
      addQuad(solid, a[k], b[k], b[l], a[l]);
    }
  }
  return solid;
}

function strip(solid: Solid, a: readonly number[], b: readonly number[], columns: number): void {
  for (let k = 0; k < columns; k++) {
    const l = (k + 1) % columns;
    addQuad(solid, a[k], a[l], b[l], b[k]);
  }
}
