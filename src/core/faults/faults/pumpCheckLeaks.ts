import { sizedFault } from '../pieceFault.ts';
import { headMoved } from '../felt.ts';

/** The pump’s check valve leaks back: a false drop. */
export const pumpCheckLeaks = sizedFault({
  id: 'pumpCheckLeaks',
  family: 'kit',
  cause: 'wear',
  on: ['testHead'],
  flaw: 'pumpCheckLeakCdAM2',
  severity: { low: 1e-10, high: 1e-6, usual: 4e-9, unit: 'm2' },
  worksLike: headMoved('fell'),
  holdPoints: ['H2', 'H9'],
  refer: ['proofFails'],
  costs: 'bothChambers',
});
