import { looked } from '../felt.ts';
import { anyOf, referred, held } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** A pitted boss: it seals on more squeeze, or not at all. */
export const bossPitted: Fault = {
  id: 'bossPitted',
  family: 'faces',
  cause: 'corrosion',
  severity: null,
  targets: [],
  triggers: ['start'],
  plant: (job) => withWorkpiece(job, { boss: 'pitted' }),
  foundIn: (job) => inJob(job.workpiece.boss === 'pitted'),
  feltBy: looked('boss', (saw) => saw.face === 'pitted'),
  endangers: { holdPoints: ['H2'] },
  rightReaction: anyOf(held('H2'), referred('bossBeyondUse', 'proofFails')),
  refer: ['bossBeyondUse', 'proofFails'],
  shares: ['H2.noDrop'],
  costs: 'asPlanted',
};
