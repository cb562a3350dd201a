import { task } from '../reactions.ts';
import { inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** A spark, flame or running engine stands within reach from the start. */
export const ignitionSource: Fault = {
  id: 'ignitionSource',
  family: 'site',
  cause: 'people',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => ({ ...job, site: { ...job.site, ignitionSource: true } }),
  foundIn: (job) => inJob(job.site.ignitionSource),
  feltBy: (f, { job }) => f.fact === 'site.done' && f.task === 'ignitionCleared' && job.site.ignitionSource,
  endangers: { holdPoints: ['H1'] },
  rightReaction: task('ignitionCleared'),
  refer: ['siteUnsafe'],
  shares: ['H1.ignition'],
  costs: 'asPlanted',
};
