import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** Not a breath of wind: a weep stays in the hole. */
export const stillAir = troubleFault({
  id: 'stillAir',
  family: 'site',
  cause: 'weather',
  what: 'stillAir',
  severity: { low: 0.3, high: 1, usual: 0.9, unit: 'share' },
  endangers: { holdPoints: ['H2', 'H4', 'H7'] },
  refer: ['siteUnsafe'],
  answers: task('ventilate'),
});
