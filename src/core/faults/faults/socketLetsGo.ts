import { flagFault } from '../pieceFault.ts';
import { valveShutOn, liftedAgain } from '../works.ts';

/** A socket with a weak spring: the plug falls out of it on the way up. */
export const socketLetsGo = flagFault({
  id: 'socketLetsGo',
  family: 'kit',
  cause: 'wear',
  on: ['socket'],
  flaw: 'looseGrip',
  worksLike: (f) => f.fact === 'load.dropped',
  work: valveShutOn,
  answers: liftedAgain,
});
