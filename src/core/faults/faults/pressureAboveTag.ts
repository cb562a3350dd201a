import { onMain } from '../felt.ts';
import { referred } from '../reactions.ts';
import { inJob, withMainAt } from '../planting.ts';
import { type Job } from '../../rig/index.ts';
import type { Fault } from '../fault.ts';

/** The main stands higher than the tag says, within the rating. */
export const pressureAboveTag: Fault = {
  id: 'pressureAboveTag',
  family: 'system',
  cause: 'network',
  severity: { low: 0.12, high: 0.5, usual: 0.3, unit: 'share' },
  targets: [],
  triggers: ['start'],
  plant: (job, share) => withMainAt(job, job.system.orderPressureGaugePa * (1 + share)),
  foundIn: ({ system }) =>
    inJob(aboveTag(system), system.mainPressureGaugePa / system.orderPressureGaugePa - 1),
  feltBy: (f, { job: { system }, limits }) =>
    f.fact === 'gauge.read' &&
    onMain(f.gauge) &&
    f.readingGaugePa > system.orderPressureGaugePa * (1 + limits.orderShare),
  endangers: { holdPoints: ['H1'] },
  rightReaction: referred('outOfRange', 'pressureAboveRating', 'mainMoves'),
  refer: ['outOfRange', 'mainMoves'],
  shares: ['H1.mainPressure'],
  costs: 'asPlanted',
};

/** Further above the tag than an order allows, and not above the rating. */
function aboveTag({ mainPressureGaugePa, orderPressureGaugePa, ratingGaugePa }: Job['system']): boolean {
  return mainPressureGaugePa > 1.1 * orderPressureGaugePa && mainPressureGaugePa <= ratingGaugePa;
}
