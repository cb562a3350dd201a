import { sizedFault } from '../pieceFault.ts';
import { puffOverShutBall } from '../felt.ts';

/** The isolation valve passes across its shut ball. */
export const valvePassing = sizedFault({
  id: 'valvePassing',
  family: 'kit',
  cause: 'wear',
  on: ['isolationValve'],
  flaw: 'seatPassingCdAM2',
  severity: { low: 3e-9, high: 1e-6, usual: 3e-7, unit: 'm2' },
  worksLike: puffOverShutBall,
  holdPoints: ['H2'],
  refer: ['valvePassing', 'proofFails'],
  shares: ['H2.seatTest', 'piece.isolationValve'],
  costs: 'ballPasses',
});
