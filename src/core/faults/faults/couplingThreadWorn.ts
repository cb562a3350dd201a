import { troubleFault } from '../troubleFault.ts';
import { anyFelt, looked, bubblesAt } from '../felt.ts';
import { isolated } from '../reactions.ts';

/** The thread of the coupling is worn: a closing plug does not seal in it. */
export const couplingThreadWorn = troubleFault({
  id: 'couplingThreadWorn',
  family: 'workpiece',
  cause: 'wear',
  what: 'threadWorn',
  severity: { low: 1e-8, high: 1e-5, usual: 3e-7, unit: 'm2' },
  endangers: { holdPoints: ['H11'] },
  refer: ['threadWorn', 'siteUnsafe'],
  worksLike: anyFelt(
    looked('downBore', (saw) => saw.threadsSound === false),
    bubblesAt('closingPlug'),
  ),
  answers: isolated,
  costs: 'gasLost',
});
