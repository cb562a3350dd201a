import { TAPER_ON_DIAMETER, taperThreads, type ThreadNps } from '../../core/catalogue/index.ts';
import { helix } from './helix.ts';
import type { RZ } from './lathe.ts';
import type { Solid } from './solid.ts';

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

/** The same thread as one helix, for a plug seen free of its hole. Its ends stand at the same heights. */
export function maleHelix(nps: ThreadNps, bottomZM: number, topZM: number, faceZM: number): Solid {
  const crestM = (z: number) => madeUpRadius(nps) - CLEAR_M + ((z - faceZM) * TAPER_ON_DIAMETER) / 2;
  const { pitchM } = taperThreads[nps];
  return helix({ lowM: bottomZM, highM: topZM, pitchM, crestM, grooveM: GROOVE_M, facets: 36 });
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
