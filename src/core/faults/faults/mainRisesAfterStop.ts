import { onMain } from '../felt.ts';
import { anyOf, referred, task, isolated } from '../reactions.ts';
import { withMainMoving } from '../../rig/index.ts';
import type { Fault } from '../fault.ts';

/** Time over which it rises, s (assumed). */
const RISES_FOR_S = 600;

/** The main rises past the rating once the bore is stopped: forward to the nearest closed state, not off. */
export const mainRisesAfterStop: Fault = {
  id: 'mainRisesAfterStop',
  family: 'system',
  cause: 'network',
  severity: { low: 6895, high: 68948, usual: 34474, unit: 'Pa' },
  targets: [],
  triggers: ['condition', 'time', 'action'],
  plant: (job, byPa, _on, atS) => withMainMoving(job, atS, job.system.ratingGaugePa + byPa, RISES_FOR_S),
  foundIn: () => [],
  feltBy: (f, { job }) =>
    f.fact === 'gauge.read' && onMain(f.gauge) && f.readingGaugePa > job.system.ratingGaugePa,
  endangers: { holdPoints: ['H10'] },
  rightReaction: anyOf(task('callGasControl'), isolated, referred('pressureAboveRating', 'mainMoves')),
  refer: ['pressureAboveRating', 'mainMoves'],
  shares: [],
  costs: 'asPlanted',
};
