import { troubleFault } from '../troubleFault.ts';
import { act } from '../reactions.ts';
import { saddleOn } from '../works.ts';

/** The square of the top plug is rounded: the wrench slips before the bite breaks. */
export const plugRounded = troubleFault({
  id: 'plugRounded',
  family: 'workpiece',
  cause: 'handling',
  what: 'plugSlips',
  severity: { low: 20, high: 150, usual: 80, unit: 'Nm' },
  endangers: { work: saddleOn },
  refer: ['plugSeized'],
  worksLike: (f) => f.fact === 'plug.turned' && f.slipped === true,
  answers: act('oil.apply'),
  triggers: ['start'],
});
