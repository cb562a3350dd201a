import { looked } from '../felt.ts';
import { referred } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** The main’s wall is thin where the chains would bear: refer back. */
export const thinWall: Fault = {
  id: 'thinWall',
  family: 'workpiece',
  cause: 'corrosion',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => withWorkpiece(job, { wallSound: false }),
  foundIn: (job) => inJob(!job.workpiece.wallSound),
  feltBy: looked('wall', (saw) => saw.wallSound === false),
  endangers: { work: (f) => f.fact === 'tensioner.turned' },
  rightReaction: referred('wallUnsound'),
  refer: ['wallUnsound'],
  shares: ['H1.wall'],
  costs: 'asPlanted',
};
