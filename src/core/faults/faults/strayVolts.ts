import { troubleFault } from '../troubleFault.ts';

/** A voltage stands across the place of the cut. */
export const strayVolts = troubleFault({
  id: 'strayVolts',
  family: 'site',
  cause: 'network',
  what: 'strayVolts',
  severity: { low: 16, high: 200, usual: 40, unit: 'V' },
  endangers: { holdPoints: ['H7'] },
  refer: ['strayVolts', 'siteUnsafe'],
  worksLike: (f) => f.fact === 'bond.sparked',
  triggers: ['start'],
});
