import { flagFault } from '../pieceFault.ts';

/** Oil on the stopper: it creeps where it should grip. */
export const stopperOily = flagFault({
  id: 'stopperOily',
  family: 'kit',
  cause: 'handling',
  on: ['boreStopper'],
  flaw: 'oily',
  worksLike: (f) => f.fact === 'stopper.slipped',
  holdPoints: ['H4'],
  refer: ['stopFails'],
});
