import { sign } from '../felt.ts';
import { anyOf, cleaned, held } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import { THICK_SCALE_M } from '../../rig/index.ts';
import type { Fault } from '../fault.ts';

/** Thick scale under the chains: the links crush it and the clamp falls. */
export const scaleUnderChain: Fault = {
  id: 'scaleUnderChain',
  family: 'faces',
  cause: 'corrosion',
  severity: { low: 0.0012, high: 0.003, usual: 0.002, unit: 'm' },
  targets: [],
  triggers: ['start'],
  plant: (job, scaleUnderChainsM) => withWorkpiece(job, { scaleUnderChainsM }),
  foundIn: ({ workpiece: { scaleUnderChainsM } }) =>
    inJob(scaleUnderChainsM > THICK_SCALE_M, scaleUnderChainsM),
  feltBy: sign('scale'),
  endangers: { work: (f) => f.fact === 'tensioner.turned' },
  rightReaction: anyOf(cleaned('pipe'), held('H2')),
  refer: ['proofFails'],
  shares: ['chainsTapped'],
  costs: 'asPlanted',
};
