import { looked } from '../felt.ts';
import { referred } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** Old wrap that may hold asbestos: stop, and call a specialist. */
export const suspectWrap: Fault = {
  id: 'suspectWrap',
  family: 'workpiece',
  cause: 'age',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => withWorkpiece(job, { wrap: 'suspect' }),
  foundIn: (job) => inJob(job.workpiece.wrap === 'suspect'),
  feltBy: looked('wrap', (saw) => saw.wrap === 'suspect'),
  endangers: { work: (f) => f.fact === 'cleaned' && f.at === 'pipe' },
  rightReaction: referred('suspectWrap'),
  refer: ['suspectWrap'],
  shares: ['H1.wrap'],
  costs: 'asPlanted',
};
