import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** Water stands in the hole: less air for gas to thin out in, and a bad foothold. */
export const waterInHole = troubleFault({
  id: 'waterInHole',
  family: 'site',
  cause: 'weather',
  what: 'water',
  severity: { low: 0.1, high: 0.7, usual: 0.4, unit: 'share' },
  endangers: { holdPoints: ['H2', 'H4', 'H8'] },
  refer: ['siteUnsafe'],
  answers: task('pumpOutWater'),
});
