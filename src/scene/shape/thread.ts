import { TAPER_ON_DIAMETER, taperThreads, type ThreadNps } from '../../core/catalogue/index.ts';
import type { RZ } from './lathe.ts';

/** Depth to which threads are drawn, and the hair's breadth kept between male and female so bodies never overlap. */
const GROOVE_M = 0.0006;
const CLEAR_M = 0.00001;

/**
 * Threads are drawn as rings on the pitch cone. `faceZM` is where the female's face stands when the joint is made up;
 * the cone widens upward from its small end. Points run upward.
 */
export function maleThread(nps: ThreadNps, bottomZM: number, topZM: number, faceZM: number): RZ[] {
  return rings(nps, bottomZM, topZM, faceZM, -1, madeUpRadius(nps));
}

/** Points run upward; reverse them for the inside of a counter-clockwise profile. */
export function femaleThread(nps: ThreadNps, bottomZM: number, topZM: number, faceZM: number): RZ[] {
  return rings(nps, bottomZM, topZM, faceZM, 1, madeUpRadius(nps));
}

/** Radius of the pitch cone at the female's face. */
const madeUpRadius = (nps: ThreadNps): number => taperThreads[nps].e1M / 2;

function rings(
  nps: ThreadNps,
  bottom: number,
  top: number,
  face: number,
  sign: 1 | -1,
  radius: number,
): RZ[] {
  const pitch = taperThreads[nps].pitchM;
  const cone = (z: number) => radius + ((z - face) * TAPER_ON_DIAMETER) / 2;
  const points: RZ[] = [];
  const turns = Math.max(1, Math.round((top - bottom) / pitch));
  const step = (top - bottom) / turns;
  for (let i = 0; i < turns; i++) {
    const z = bottom + i * step;
    points.push([cone(z) + sign * CLEAR_M, z]);
    points.push([cone(z + step / 2) + sign * (CLEAR_M + GROOVE_M), z + step / 2]);
  }
  points.push([cone(top) + sign * CLEAR_M, top]);
  return points;
}
