import { sizedFault } from '../pieceFault.ts';
import { bubblesAt } from '../felt.ts';

/** The rod’s gland lets gas by into the hole. */
export const glandWeeping = sizedFault({
  id: 'glandWeeping',
  family: 'kit',
  cause: 'wear',
  on: ['rodBarrel'],
  flaw: 'glandWeepCdAM2',
  severity: { low: 1e-9, high: 1e-6, usual: 5e-9, unit: 'm2' },
  worksLike: bubblesAt('gland'),
  holdPoints: ['H4'],
  refer: ['proofFails'],
  costs: 'gasLost',
});
