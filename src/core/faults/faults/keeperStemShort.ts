import { sizedFault } from '../pieceFault.ts';

/** A keeper whose stem is too short to hold the stopper down. */
export const keeperStemShort = sizedFault({
  id: 'keeperStemShort',
  family: 'sizes',
  cause: 'making',
  on: ['keeperPlug'],
  flaw: 'stemShortM',
  severity: { low: 0.008, high: 0.03, usual: 0.02, unit: 'm' },
  holdPoints: ['H6'],
});
