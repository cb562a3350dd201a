import { sizedFault } from '../pieceFault.ts';

/** A keeper whose stem meets the stopper before its thread is tight. */
export const keeperStemLong = sizedFault({
  id: 'keeperStemLong',
  family: 'sizes',
  cause: 'making',
  on: ['keeperPlug'],
  flaw: 'stemLongM',
  severity: { low: 0.004, high: 0.02, usual: 0.01, unit: 'm' },
  holdPoints: ['H6'],
});
