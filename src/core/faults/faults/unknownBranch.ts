import { troubleFault } from '../troubleFault.ts';
import { stopHiss } from '../felt.ts';
import { task } from '../reactions.ts';

/** A branch nobody knew of hangs on the service: more gas, and perhaps another way in. */
export const unknownBranch = troubleFault({
  id: 'unknownBranch',
  family: 'workpiece',
  cause: 'records',
  what: 'unknownBranch',
  severity: { low: 0.005, high: 0.05, usual: 0.015, unit: 'm3' },
  endangers: { holdPoints: ['H7'] },
  refer: ['wrongService', 'stopFails'],
  worksLike: stopHiss((share) => share > 1.3),
  answers: task('callGasControl', 'traceAtMain', 'openMeterStop'),
  costs: 'hiss',
  triggers: ['start'],
});
