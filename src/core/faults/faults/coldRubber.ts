import { troubleFault } from '../troubleFault.ts';
import { held } from '../reactions.ts';

/** Frost stiffens the rubber: ring and stopper want more squeeze. */
export const coldRubber = troubleFault({
  id: 'coldRubber',
  family: 'site',
  cause: 'weather',
  what: 'cold',
  severity: { low: 0.1, high: 0.8, usual: 0.3, unit: 'share' },
  endangers: { holdPoints: ['H4'] },
  refer: ['stopFails', 'proofFails'],
  answers: held('H4'),
  triggers: ['start'],
});
