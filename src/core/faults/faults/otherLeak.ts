import { troubleFault } from '../troubleFault.ts';
import { gasInHole } from '../felt.ts';
import { task } from '../reactions.ts';

/** Gas comes into the hole from another leak near by. */
export const otherLeak = troubleFault({
  id: 'otherLeak',
  family: 'site',
  cause: 'corrosion',
  what: 'otherLeak',
  severity: { low: 0.0005, high: 0.05, usual: 0.008, unit: 'molPerS' },
  endangers: { holdPoints: ['H1', 'H2', 'H4', 'H7', 'H10'] },
  refer: ['gasInHole', 'siteUnsafe'],
  worksLike: gasInHole,
  answers: task('ventilate'),
  costs: 'holeLel',
});
