import { sizedFault } from '../pieceFault.ts';
import { isolated } from '../reactions.ts';
import { hardEarly } from '../works.ts';

/** A closing plug that meets the bottom before its thread is tight. */
export const closingPlugBottoms = sizedFault({
  id: 'closingPlugBottoms',
  family: 'sizes',
  cause: 'making',
  on: ['closingPlug'],
  flaw: 'bottomsTurns',
  severity: { low: 0.2, high: 1.2, usual: 0.6, unit: 'turns' },
  worksLike: hardEarly,
  holdPoints: ['H11'],
  answers: isolated,
});
