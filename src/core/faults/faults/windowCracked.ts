import { flagFault } from '../pieceFault.ts';

/** A cracked window in the sight cap: it is withdrawn. */
export const windowCracked = flagFault({
  id: 'windowCracked',
  family: 'kit',
  cause: 'wear',
  on: ['sightCap'],
  flaw: 'crackedWindow',
});
