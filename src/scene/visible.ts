import type { SceneView } from './describe/view.ts';

/** Steps an eye can tell: lengths, turns and angles by a hundredth of a millimetre or rad; tints by their own scales. */
const STEP = 1e-5;
const stepOf: Readonly<Record<string, number>> = { gaugePa: 400, gasFraction: 0.004 };

const rounded = (key: string, value: unknown): unknown => {
  if (typeof value !== 'number') return value;
  // A stream or leak is seen by how many times more or less it is.
  if (key === 'kgPerS' || key === 'gasMolPerS') return value.toPrecision(2);
  return Math.round(value / (stepOf[key] ?? STEP));
};

/** What of a view an eye could tell: of two views with the same, one need not be drawn. */
export function visibleIn({ items, chains, cables, details, gas, flows, fluid, hole }: SceneView): string {
  return JSON.stringify([items, chains, cables, details, gas, flows, fluid, hole], rounded);
}
