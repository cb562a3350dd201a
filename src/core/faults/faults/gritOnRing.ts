import { sizedFault } from '../pieceFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';

/** Grit bedded in the rubber of a seat ring. */
export const gritOnRing = sizedFault({
  id: 'gritOnRing',
  family: 'faces',
  cause: 'debris',
  on: ['seatRing'],
  flaw: 'gritCdAM2',
  severity: { low: 5e-10, high: 1e-7, usual: 2.2e-9, unit: 'm2' },
  worksLike: anyFelt(bubblesAt('seat'), headMoved('fell', 'tee')),
  holdPoints: ['H2'],
  refer: ['proofFails'],
  costs: 'firstChamber',
});
