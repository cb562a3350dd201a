import { troubleFault } from '../troubleFault.ts';
import { stopHiss } from '../felt.ts';
import { task } from '../reactions.ts';

/** A device in the branch shuts as gas is drawn back: the bleed never hisses, and the service beyond stays full. */
export const excessFlowDevice = troubleFault({
  id: 'excessFlowDevice',
  family: 'workpiece',
  cause: 'records',
  what: 'excessFlow',
  severity: { low: 1e-10, high: 1e-8, usual: 1e-9, unit: 'm2' },
  endangers: { holdPoints: ['H7'] },
  refer: ['stopFails'],
  worksLike: stopHiss((share) => share < 0.5),
  answers: task('openMeterStop'),
  costs: 'gasLost',
  triggers: ['start'],
  shares: ['H4.hissed'],
});
