import { troubleFault } from '../troubleFault.ts';

/** The service traced is not the one on the work order. */
export const wrongService = troubleFault({
  id: 'wrongService',
  family: 'workpiece',
  cause: 'records',
  what: 'wrongService',
  severity: null,
  endangers: { holdPoints: ['H1'] },
  refer: ['wrongService'],
  triggers: ['start'],
});
