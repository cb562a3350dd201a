import { onMain } from '../felt.ts';
import { referred } from '../reactions.ts';
import { inJob, withMainAt } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** The main stands above what the rig is rated for: stop and refer back. */
export const pressureAboveRating: Fault = {
  id: 'pressureAboveRating',
  family: 'system',
  cause: 'network',
  severity: { low: 0.03, high: 0.4, usual: 0.1, unit: 'share' },
  targets: [],
  triggers: ['start'],
  plant: (job, share) => withMainAt(job, job.system.ratingGaugePa * (1 + share)),
  foundIn: ({ system }) =>
    inJob(
      system.mainPressureGaugePa > system.ratingGaugePa,
      system.mainPressureGaugePa / system.ratingGaugePa - 1,
    ),
  feltBy: (f, { job }) =>
    f.fact === 'gauge.read' && onMain(f.gauge) && f.readingGaugePa > job.system.ratingGaugePa,
  endangers: { holdPoints: ['H1'] },
  rightReaction: referred('pressureAboveRating', 'outOfRange'),
  refer: ['pressureAboveRating', 'outOfRange'],
  shares: ['H1.mainPressure'],
  costs: 'asPlanted',
};
