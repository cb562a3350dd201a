import type { Fault } from '../fault.ts';
import { sizedFault } from '../pieceFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';

/** A joint of the stack has worked loose: the loosest one turns, not the one meant. */
export const looseJoint: Fault = {
  ...sizedFault({
    id: 'looseJoint',
    family: 'kit',
    cause: 'handling',
    on: ['isolationValve', 'lowerSpool', 'upperSpool'],
    flaw: 'looseNm',
    severity: { low: 1, high: 14, usual: 5, unit: 'Nm' },
    worksLike: anyFelt(
      bubblesAt('valveJoint', 'spoolJoint'),
      headMoved('fell'),
      (f, { on }) => f.fact === 'joint.turned' && f.joint === on,
    ),
    holdPoints: ['H2', 'H9'],
    refer: ['proofFails'],
    costs: 'looseJoint',
    triggers: ['time', 'action', 'condition'],
  }),
  // a joint that is taken apart is made up anew
  goneWith: (f, { on }) => f.fact === 'piece.placed' && f.piece === on,
};
