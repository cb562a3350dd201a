import { sizedFault } from '../pieceFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';

/** A gasket that leaks more than this has given way, m². */
const BLOWN_FROM_M2 = 1.5e-6;

/** The lip of the cup gasket is pinched. */
export const gasketPinched = sizedFault({
  id: 'gasketPinched',
  family: 'kit',
  cause: 'handling',
  on: ['cupGasket'],
  flaw: 'pinchedCdAM2',
  severity: { low: 5e-9, high: 1e-6, usual: 2e-8, unit: 'm2' },
  worksLike: anyFelt(bubblesAt('seat'), headMoved('fell', 'coupling')),
  holdPoints: ['H9'],
  refer: ['proofFails'],
  costs: 'secondChamber',
  is: (size) => size <= BLOWN_FROM_M2,
});
