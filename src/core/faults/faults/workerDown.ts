import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';
import { handsInHole } from '../works.ts';

/** Somebody lies in the hole: nobody goes in without air; bring them out by the line. */
export const workerDown = troubleFault({
  id: 'workerDown',
  family: 'site',
  cause: 'people',
  what: 'workerDown',
  severity: null,
  endangers: { work: handsInHole },
  refer: ['siteUnsafe'],
  answers: task('retrieveByLine'),
  triggers: ['time', 'action', 'condition'],
});
