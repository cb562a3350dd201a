import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** A second house hangs on the service: it goes out too and must be relit. */
export const secondHouse = troubleFault({
  id: 'secondHouse',
  family: 'workpiece',
  cause: 'records',
  what: 'secondHouse',
  severity: { low: 1e-8, high: 1e-6, usual: 1e-7, unit: 'm2' },
  endangers: { holdPoints: ['H4'] },
  refer: ['wrongService'],
  answers: task('callGasControl'),
  costs: 'gasLost',
  triggers: ['start'],
});
