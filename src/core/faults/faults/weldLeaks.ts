import { troubleFault } from '../troubleFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';
import { gasketOn } from '../works.ts';

/** The coupling’s weld is thin and leaks. */
export const weldLeaks = troubleFault({
  id: 'weldLeaks',
  family: 'workpiece',
  cause: 'corrosion',
  what: 'weldLeak',
  severity: { low: 1e-10, high: 1e-7, usual: 2e-9, unit: 'm2' },
  endangers: { work: gasketOn, holdPoints: ['H9'] },
  refer: ['weldLeaks', 'proofFails', 'gasInHole'],
  worksLike: anyFelt(bubblesAt('weld'), headMoved('rose', 'coupling')),
  costs: 'gasLost',
});
