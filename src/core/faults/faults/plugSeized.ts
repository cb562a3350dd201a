import { anyOf, referred, act } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import { saddleOn } from '../works.ts';
import type { Fault } from '../fault.ts';

/** Torque from which an old plug is left alone (assumed). */
const SEIZED_NM = 300;

/** A top plug rusted fast: oil and time, or refer back. */
export const plugSeized: Fault = {
  id: 'plugSeized',
  family: 'workpiece',
  cause: 'corrosion',
  severity: { low: 421, high: 600, usual: 520, unit: 'Nm' },
  targets: [],
  triggers: ['start'],
  plant: (job, plugBreakNm) => withWorkpiece(job, { plugBreakNm }),
  foundIn: ({ workpiece }) => inJob(workpiece.plugBreakNm > SEIZED_NM, workpiece.plugBreakNm),
  feltBy: (f) => f.fact === 'plug.turned' && f.torqueNm > SEIZED_NM && f.slipped !== true,
  endangers: { work: saddleOn },
  rightReaction: anyOf(
    act('oil.apply', (action) => action.kind === 'oil.apply' && action.at === 'plug'),
    referred('plugSeized'),
  ),
  refer: ['plugSeized'],
  shares: [],
  costs: 'asPlanted',
};
