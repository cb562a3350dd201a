import { flagFault } from '../pieceFault.ts';

/** Sealant on rubber: it slides where it should grip. */
export const sealantOnRubber = flagFault({
  id: 'sealantOnRubber',
  family: 'faces',
  cause: 'handling',
  on: ['boreStopper'],
  flaw: 'sealantSmeared',
  holdPoints: ['H4'],
  refer: ['stopFails'],
});
