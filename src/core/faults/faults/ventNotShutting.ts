import { sizedFault } from '../pieceFault.ts';
import { headMoved } from '../felt.ts';

/** The vent of the test head does not shut: a proof falls that nothing else makes fall. */
export const ventNotShutting = sizedFault({
  id: 'ventNotShutting',
  family: 'kit',
  cause: 'wear',
  on: ['testHead'],
  flaw: 'ventNotShuttingCdAM2',
  severity: { low: 1e-10, high: 1e-6, usual: 4e-9, unit: 'm2' },
  worksLike: headMoved('fell'),
  holdPoints: ['H2', 'H9'],
  refer: ['proofFails'],
  costs: 'bothChambers',
});
