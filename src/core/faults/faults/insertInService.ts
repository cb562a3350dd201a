import { troubleFault } from '../troubleFault.ts';

/** Plastic or copper lies inside the old steel service: another procedure, and static. */
export const insertInService = troubleFault({
  id: 'insertInService',
  family: 'workpiece',
  cause: 'records',
  what: 'insert',
  severity: null,
  endangers: { holdPoints: ['H7'] },
  refer: ['insertFound', 'wrongService'],
  triggers: ['start'],
});
