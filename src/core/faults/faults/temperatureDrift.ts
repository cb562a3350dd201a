import { troubleFault } from '../troubleFault.ts';
import { anyFelt, headMoved } from '../felt.ts';
import { held } from '../reactions.ts';

/** Sun or frost changes the shut-in air’s temperature: the gauge moves though nothing leaks. */
export const temperatureDrift = troubleFault({
  id: 'temperatureDrift',
  family: 'system',
  cause: 'weather',
  what: 'drift',
  severity: { low: -15, high: 15, usual: -8, unit: 'K' },
  endangers: { holdPoints: ['H2', 'H9'] },
  refer: ['proofFails'],
  worksLike: anyFelt(headMoved('fell'), headMoved('rose')),
  answers: held('H2'),
  costs: 'drift',
});
