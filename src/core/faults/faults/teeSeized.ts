import { anyOf, referred, act } from '../reactions.ts';
import { withWorkpiece, inJob } from '../planting.ts';
import { gasketOn } from '../works.ts';
import type { Fault } from '../fault.ts';

/** Most that two people give a pipe wrench (assumed, as in the rig). */
const WRENCH_NM = 420;

/** A tee rusted fast in its coupling. */
export const teeSeized: Fault = {
  id: 'teeSeized',
  family: 'workpiece',
  cause: 'corrosion',
  severity: { low: 421, high: 800, usual: 600, unit: 'Nm' },
  targets: [],
  triggers: ['start'],
  plant: (job, teeBreakNm) => withWorkpiece(job, { teeBreakNm }),
  foundIn: ({ workpiece }) => inJob(workpiece.teeBreakNm > WRENCH_NM, workpiece.teeBreakNm),
  feltBy: (f) => f.fact === 'tee.turned' && f.torqueNm >= WRENCH_NM,
  endangers: { work: gasketOn, holdPoints: ['H9'] },
  rightReaction: anyOf(act('oil.apply'), referred('teeSeized')),
  refer: ['teeSeized'],
  shares: [],
  costs: 'asPlanted',
};
