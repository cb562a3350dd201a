import { ring } from '../shape/lathe.ts';
import { box } from '../shape/prism.ts';
import { alongY, join, moved, type Solid } from '../shape/solid.ts';
import type { Joint, Part } from './part.ts';

/** How far a cock stands out from the wall it is screwed into, m: the hose goes on there. */
export const COCK_REACH_M = 0.046;

/** Small quarter-turn cock pointing along +y from a wall, its lever across the flow when shut. */
export function cockParts(wallM: number, zM: number, by: Joint['by'], perUnit: number): Part[] {
  const body: Solid = join(
    alongY(ring(0, 0.006, wallM - 0.002, wallM + 0.012, 14)),
    alongY(ring(0, 0.009, wallM + 0.01204, wallM + 0.034, 14)),
    alongY(ring(0, 0.0055, wallM + 0.03404, wallM + COCK_REACH_M, 14)),
  );
  const pivot = wallM + 0.023;
  const lever = join(
    ring(0, 0.0045, 0.00904, 0.014, 12),
    box(-0.004, 0.03, -0.0035, 0.0035, 0.01404, 0.0175),
  );
  return [
    { name: 'cock', stuff: 'brass', cut: false, body: moved(body, [0, 0, zM]) },
    {
      name: 'lever',
      stuff: 'paint',
      cut: false,
      body: moved(lever, [0, pivot, zM]),
      joint: { by, axis: [0, 0, 1], at: [0, pivot, zM], perUnit },
    },
  ];
}
