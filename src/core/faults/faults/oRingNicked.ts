import { sizedFault } from '../pieceFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';

/** An O-ring cut when its joint was made up: it leaks most at low pressure. */
export const oRingNicked = sizedFault({
  id: 'oRingNicked',
  family: 'kit',
  cause: 'handling',
  on: ['isolationValve', 'lowerSpool', 'upperSpool', 'testHead', 'rodBarrel', 'sightCap'],
  flaw: 'oRingNickCdAM2',
  severity: { low: 3e-10, high: 5e-7, usual: 9e-10, unit: 'm2' },
  worksLike: anyFelt(bubblesAt('valveJoint', 'spoolJoint', 'topJoint'), headMoved('fell')),
  holdPoints: ['H2', 'H9'],
  refer: ['proofFails'],
  costs: 'jointFlaw',
});
