import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** The service is under strain and springs when it is parted. */
export const pipeSprings = troubleFault({
  id: 'pipeSprings',
  family: 'site',
  cause: 'age',
  what: 'springs',
  severity: { low: 0.005, high: 0.05, usual: 0.02, unit: 'm' },
  endangers: { work: (f) => f.fact === 'branch.cut' && f.part === 'through' },
  refer: ['siteUnsafe'],
  answers: task('supportPipe'),
  triggers: ['start'],
});
