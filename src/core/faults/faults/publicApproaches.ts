import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** People come up to the hole, one of them smoking. */
export const publicApproaches = troubleFault({
  id: 'publicApproaches',
  family: 'site',
  cause: 'people',
  what: 'public',
  severity: null,
  endangers: { holdPoints: ['H2', 'H4', 'H7', 'H10'] },
  refer: ['siteUnsafe'],
  answers: task('clearPublic'),
});
