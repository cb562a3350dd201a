import { sign } from '../felt.ts';
import { referred } from '../reactions.ts';
import { withService, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** The service is fed from its far end: stopping the bore does not make it dead. */
export const farFeed: Fault = {
  id: 'farFeed',
  family: 'workpiece',
  cause: 'records',
  severity: { low: 1e-8, high: 1e-5, usual: 3e-7, unit: 'm2' },
  targets: [],
  triggers: ['start'],
  plant: (job, curbPassingCdAM2) =>
    withService(job, { curbPassingCdAM2, beyondCurbGaugePa: job.system.mainPressureGaugePa }),
  foundIn: ({ system: { service } }) =>
    inJob(service.curbPassingCdAM2 > 0 && service.beyondCurbGaugePa > 0, service.curbPassingCdAM2),
  feltBy: sign('curbPassing'),
  endangers: { holdPoints: ['H7'] },
  rightReaction: referred('stopFails', 'wrongService'),
  refer: ['stopFails', 'wrongService'],
  shares: ['H4.noPuff', 'H4.manometer', 'H1.supply'],
  costs: 'gasLost',
};
