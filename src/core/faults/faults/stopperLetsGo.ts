import { flagFault } from '../pieceFault.ts';
import { fetched } from '../works.ts';

/** A stripped squeeze screw: the stopper falls as the holder lets go. */
export const stopperLetsGo = flagFault({
  id: 'stopperLetsGo',
  family: 'kit',
  cause: 'wear',
  on: ['boreStopper'],
  flaw: 'screwSlips',
  worksLike: (f) => f.fact === 'stopper.dropped',
  holdPoints: ['H5', 'H6'],
  answers: fetched,
  refer: ['stopFails'],
});
