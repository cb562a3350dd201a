import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** A gauge on the main with far too great a range: its divisions hide what matters. */
export const gaugeUnfit = troubleFault({
  id: 'gaugeUnfit',
  family: 'kit',
  cause: 'handling',
  what: 'gaugeUnfit',
  severity: { low: 1000000.0, high: 7000000.0, usual: 4000000.0, unit: 'Pa' },
  endangers: { holdPoints: ['H1'] },
  refer: ['kitUnfit'],
  worksLike: (f) => f.fact === 'gauge.zeroed' && f.rangePa !== undefined,
  answers: task('changeGauge'),
  triggers: ['start'],
});
