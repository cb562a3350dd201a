import { troubleFault } from '../troubleFault.ts';
import { anyFelt, bubblesAt, headMoved } from '../felt.ts';
import { gasketOn } from '../works.ts';

/** Breaking the tee’s bite opens a crack in the coupling’s weld. */
export const weldWeepsAfterBite = troubleFault({
  id: 'weldWeepsAfterBite',
  family: 'workpiece',
  cause: 'corrosion',
  what: 'weldWeep',
  severity: { low: 1e-10, high: 1e-7, usual: 1e-9, unit: 'm2' },
  endangers: { work: gasketOn, holdPoints: ['H9'] },
  refer: ['weldLeaks', 'proofFails', 'gasInHole'],
  worksLike: anyFelt(bubblesAt('weld'), headMoved('rose', 'coupling')),
  costs: 'gasLost',
  triggers: ['start'],
});
