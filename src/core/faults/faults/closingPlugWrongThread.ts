import { flagFault } from '../pieceFault.ts';
import { isolated } from '../reactions.ts';

/** A closing plug of another thread standard. */
export const closingPlugWrongThread = flagFault({
  id: 'closingPlugWrongThread',
  family: 'sizes',
  cause: 'mislabelled',
  on: ['closingPlug'],
  flaw: 'wrongThread',
  holdPoints: ['H11'],
  answers: isolated,
});
