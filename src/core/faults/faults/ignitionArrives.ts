import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** A vehicle or burner comes near while the work goes on. */
export const ignitionArrives = troubleFault({
  id: 'ignitionArrives',
  family: 'site',
  cause: 'people',
  what: 'ignition',
  severity: null,
  endangers: { holdPoints: ['H2', 'H4', 'H7', 'H10'] },
  refer: ['siteUnsafe'],
  answers: task('ignitionCleared', 'clearPublic'),
});
