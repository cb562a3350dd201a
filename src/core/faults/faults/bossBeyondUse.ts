import { looked } from '../felt.ts';
import { referred } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import { saddleOn } from '../works.ts';
import type { Fault } from '../fault.ts';

/** A boss eaten away so far that no ring seals on it: stop and refer back. */
export const bossBeyondUse: Fault = {
  id: 'bossBeyondUse',
  family: 'faces',
  cause: 'corrosion',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => withWorkpiece(job, { boss: 'beyondUse' }),
  foundIn: (job) => inJob(job.workpiece.boss === 'beyondUse'),
  feltBy: looked('boss', (saw) => saw.face === 'beyondUse'),
  endangers: { work: saddleOn, holdPoints: ['H2'] },
  rightReaction: referred('bossBeyondUse'),
  refer: ['bossBeyondUse'],
  shares: [],
  costs: 'asPlanted',
};
