import { sizedFault } from '../pieceFault.ts';

/** A valve whose handle goes hard cannot be shut in time. */
export const valveStiff = sizedFault({
  id: 'valveStiff',
  family: 'kit',
  cause: 'age',
  on: ['isolationValve'],
  flaw: 'stiffNm',
  severity: { low: 15, high: 60, usual: 35, unit: 'Nm' },
  worksLike: (f) => f.fact === 'valve.turned' && f.stiffNm !== undefined,
  holdPoints: ['H2'],
  refer: ['valvePassing'],
});
