import { mainMoved } from '../felt.ts';
import { anyOf, referred, task } from '../reactions.ts';
import { withMainMoving } from '../../rig/index.ts';
import type { Fault } from '../fault.ts';

/** Time over which it falls, s (assumed). */
const FALLS_FOR_S = 1200;

/** The main falls: another crew works on it, or the district is running dry. */
export const mainFalling: Fault = {
  id: 'mainFalling',
  family: 'system',
  cause: 'network',
  severity: { low: 0.15, high: 0.9, usual: 0.5, unit: 'share' },
  targets: [],
  triggers: ['time', 'action', 'condition'],
  plant: (job, share, _on, atS) =>
    withMainMoving(job, atS, job.system.mainPressureGaugePa * (1 - share), FALLS_FOR_S),
  foundIn: () => [],
  feltBy: mainMoved('down'),
  endangers: { holdPoints: ['H9', 'H10'] },
  rightReaction: anyOf(task('callGasControl'), referred('mainMoves', 'outOfRange')),
  refer: ['mainMoves', 'outOfRange'],
  shares: [],
  costs: 'asPlanted',
};
