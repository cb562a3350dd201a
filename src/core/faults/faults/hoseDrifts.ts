import { troubleFault } from '../troubleFault.ts';
import { act } from '../reactions.ts';

/** Wind carries the hose’s end back to the hole: what is bled comes down on the crew. */
export const hoseDrifts = troubleFault({
  id: 'hoseDrifts',
  family: 'kit',
  cause: 'weather',
  what: 'hoseDrifted',
  severity: { low: 0.2, high: 1, usual: 0.7, unit: 'share' },
  endangers: {
    work: (f, story) => f.fact === 'bleed.turned' && f.openRad > 0 && f.aboveGaugePa > story.limits.puffPa,
  },
  refer: ['siteUnsafe', 'gasInHole'],
  answers: act('hose.lead'),
  costs: 'asPlanted',
  // a hose is led before it can lie badly
  triggers: ['time', 'action', 'condition'],
});
