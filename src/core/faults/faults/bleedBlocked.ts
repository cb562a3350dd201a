import { sizedFault } from '../pieceFault.ts';
import { anyFelt, stopHiss } from '../felt.ts';
import { act } from '../reactions.ts';

/** Debris in the bleed: quiet is then not empty, only unknown. */
export const bleedBlocked = sizedFault({
  id: 'bleedBlocked',
  family: 'kit',
  cause: 'debris',
  on: ['rodBarrel', 'sightCap'],
  flaw: 'bleedBlocked',
  severity: { low: 0.3, high: 1, usual: 0.95, unit: 'share' },
  worksLike: anyFelt(
    (f) => f.fact === 'bleed.cleared' && f.cameOut,
    stopHiss((share) => share > 2),
  ),
  holdPoints: ['H4'],
  answers: act('bleed.clear'),
  refer: ['stopFails'],
});
