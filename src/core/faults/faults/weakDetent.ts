import { flagFault } from '../pieceFault.ts';

/** A holder with a weak detent: a quick move drops the stopper. */
export const weakDetent = flagFault({
  id: 'weakDetent',
  family: 'kit',
  cause: 'wear',
  on: ['stopperHolder'],
  flaw: 'weakDetent',
  worksLike: (f) => f.fact === 'stopper.dropped',
  holdPoints: ['H4'],
  refer: ['stopFails'],
});
