import { anyFelt, bubblesAt, headMoved } from '../felt.ts';
import { anyOf, referred, held } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import type { Fault } from '../fault.ts';

/** A cracked top plug that passes: it hides itself in the proof, which gas from below holds up. */
export const plugPassing: Fault = {
  id: 'plugPassing',
  family: 'workpiece',
  cause: 'age',
  severity: { low: 1e-10, high: 1e-6, usual: 5e-9, unit: 'm2' },
  targets: [],
  triggers: ['start', 'time', 'action', 'condition'],
  plant: (job, plugLeakCdAM2) => withWorkpiece(job, { plugLeakCdAM2 }),
  foundIn: ({ workpiece }) => inJob(workpiece.plugLeakCdAM2 > 0, workpiece.plugLeakCdAM2),
  feltBy: anyFelt(bubblesAt('plug'), headMoved('rose', 'tee')),
  endangers: { holdPoints: ['H2'] },
  rightReaction: anyOf(held('H2'), referred('proofFails')),
  refer: ['proofFails'],
  shares: ['H2.rise'],
  costs: 'plugPasses',
};
