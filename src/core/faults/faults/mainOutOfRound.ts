import { troubleFault } from '../troubleFault.ts';
import { held } from '../reactions.ts';
import { saddleOn } from '../works.ts';

/** The main is out of round: the chains draw the saddle askew. */
export const mainOutOfRound = troubleFault({
  id: 'mainOutOfRound',
  family: 'workpiece',
  cause: 'age',
  what: 'outOfRound',
  severity: { low: 0.001, high: 0.008, usual: 0.004, unit: 'm' },
  endangers: { work: saddleOn },
  refer: ['outOfRange', 'proofFails'],
  answers: held('H2'),
  triggers: ['start'],
});
