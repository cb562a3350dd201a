import { sizedFault } from '../pieceFault.ts';
import { stoppedBefore } from '../works.ts';

/** Worn stopper rubber: it lets gas by however firm it is. */
export const stopperWorn = sizedFault({
  id: 'stopperWorn',
  family: 'kit',
  cause: 'wear',
  on: ['boreStopper'],
  flaw: 'rubberWornCdAM2',
  severity: { low: 2e-8, high: 1e-6, usual: 5e-8, unit: 'm2' },
  worksLike: (f, story, at) => f.fact === 'bleed.turned' && f.puff && stoppedBefore(story, at),
  holdPoints: ['H4'],
  refer: ['stopFails'],
  costs: 'gasLost',
});
