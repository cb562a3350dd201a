import { sizedFault } from '../pieceFault.ts';

/** The test head’s gauge reads low. */
export const gaugeReadsLow = sizedFault({
  id: 'gaugeReadsLow',
  family: 'kit',
  cause: 'wear',
  on: ['testHead'],
  flaw: 'gaugeOffsetPa',
  severity: { low: 6895, high: 41369, usual: 13790, unit: 'Pa' },
  sizeOf: (pa) => -pa,
  holdPoints: ['H2'],
});
