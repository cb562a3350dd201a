import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** Liquid comes from the bleed: stop, stand clear, report. */
export const liquidFromBleed = troubleFault({
  id: 'liquidFromBleed',
  family: 'system',
  cause: 'network',
  what: 'liquid',
  severity: null,
  endangers: { holdPoints: ['H4'] },
  refer: ['liquidInMain'],
  answers: task('callGasControl'),
});
