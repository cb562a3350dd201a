import { mainMoved } from '../felt.ts';
import { anyOf, referred, task } from '../reactions.ts';
import { withMainMoving } from '../../rig/index.ts';
import type { Fault } from '../fault.ts';

/** Time over which it climbs, s (assumed). */
const CREEPS_FOR_S = 1800;

/** A regulator creeps: the main climbs through the job. */
export const regulatorCreep: Fault = {
  id: 'regulatorCreep',
  family: 'system',
  cause: 'network',
  severity: { low: 13790, high: 103421, usual: 55158, unit: 'Pa' },
  targets: [],
  triggers: ['time', 'action', 'condition'],
  plant: (job, byPa, _on, atS) =>
    withMainMoving(job, atS, job.system.mainPressureGaugePa + byPa, CREEPS_FOR_S),
  foundIn: () => [],
  feltBy: mainMoved('up'),
  endangers: { holdPoints: ['H9', 'H10'] },
  rightReaction: anyOf(task('callGasControl'), referred('mainMoves', 'outOfRange', 'pressureAboveRating')),
  refer: ['mainMoves', 'outOfRange'],
  shares: [],
  costs: 'asPlanted',
};
