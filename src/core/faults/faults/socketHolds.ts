import { flagFault } from '../pieceFault.ts';
import { act } from '../reactions.ts';

/** A socket that will not let go of the closing plug: the rig stays on until it does. */
export const socketHolds = flagFault({
  id: 'socketHolds',
  family: 'kit',
  cause: 'wear',
  on: ['socket'],
  flaw: 'jams',
  worksLike: (f) => f.fact === 'socket.stuck',
  holdPoints: ['H11'],
  answers: act('rod.move'),
});
