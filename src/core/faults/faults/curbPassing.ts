import { sign } from '../felt.ts';
import { anyOf, referred, task } from '../reactions.ts';
import { withService, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** The curb valve lets gas by to a house that is off. */
export const curbPassing: Fault = {
  id: 'curbPassing',
  family: 'workpiece',
  cause: 'wear',
  severity: { low: 1e-9, high: 1e-5, usual: 1e-7, unit: 'm2' },
  targets: [],
  triggers: ['start'],
  plant: (job, curbPassingCdAM2) => withService(job, { curbPassingCdAM2 }),
  foundIn: ({ system: { service } }) =>
    inJob(service.curbPassingCdAM2 > 0 && service.beyondCurbGaugePa === 0, service.curbPassingCdAM2),
  feltBy: sign('curbPassing'),
  endangers: { holdPoints: ['H4'] },
  rightReaction: anyOf(task('openMeterStop', 'callGasControl'), referred('stopFails', 'wrongService')),
  refer: ['stopFails', 'wrongService'],
  shares: ['H1.supply'],
  costs: 'gasLost',
};
