import { flagFault } from '../pieceFault.ts';

/** A keeper plug of another thread standard: it binds early and seals nothing. */
export const keeperWrongThread = flagFault({
  id: 'keeperWrongThread',
  family: 'sizes',
  cause: 'mislabelled',
  on: ['keeperPlug'],
  flaw: 'wrongThread',
  holdPoints: ['H6'],
});
