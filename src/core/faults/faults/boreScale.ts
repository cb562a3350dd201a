import { looked } from '../felt.ts';
import { anyOf, referred, cleaned } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** Scale lies in the lower bore: the stopper beds on it. */
export const boreScale: Fault = {
  id: 'boreScale',
  family: 'faces',
  cause: 'corrosion',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => withWorkpiece(job, { boreScale: true }),
  foundIn: (job) => inJob(job.workpiece.boreScale),
  feltBy: looked('downBore', (saw) => saw.boreClear === false),
  endangers: { holdPoints: ['H3'] },
  rightReaction: anyOf(cleaned('bore'), referred('stopFails')),
  refer: ['stopFails'],
  shares: ['H3.clear'],
  costs: 'asPlanted',
};
