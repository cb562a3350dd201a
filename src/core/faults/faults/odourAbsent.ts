import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** The gas has no smell: trust the instrument and report. */
export const odourAbsent = troubleFault({
  id: 'odourAbsent',
  family: 'system',
  cause: 'network',
  what: 'noOdour',
  severity: null,
  endangers: { holdPoints: ['H4', 'H7'] },
  refer: ['gasInHole', 'siteUnsafe'],
  answers: task('callGasControl'),
});
