import { sizedFault } from '../pieceFault.ts';
import { puffOverShutBall } from '../felt.ts';

/** Filings from the trimming lie on the isolation valve’s seat. */
export const filingsOnSeat = sizedFault({
  id: 'filingsOnSeat',
  family: 'faces',
  cause: 'debris',
  on: ['isolationValve'],
  flaw: 'filingsCdAM2',
  severity: { low: 3e-9, high: 3e-7, usual: 1e-7, unit: 'm2' },
  worksLike: puffOverShutBall,
  holdPoints: ['H9', 'H10'],
  refer: ['valvePassing', 'proofFails'],
  costs: 'ballPasses',
});
