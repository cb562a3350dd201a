import { sizedFault } from '../pieceFault.ts';

/** The pointer of the test head’s gauge sticks: it never falls. */
export const gaugeStuck = sizedFault({
  id: 'gaugeStuck',
  family: 'kit',
  cause: 'wear',
  on: ['testHead'],
  flaw: 'gaugeStuckPa',
  severity: { low: 0, high: 413685, usual: 241317, unit: 'Pa' },
  holdPoints: ['H2'],
  refer: ['proofFails'],
});
