import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** A detector that shows too little of its test gas, though it shows some. */
export const detectorReadsLow = troubleFault({
  id: 'detectorReadsLow',
  family: 'kit',
  cause: 'age',
  what: 'detectorUnfit',
  severity: { low: 0.15, high: 0.5, usual: 0.4, unit: 'share' },
  endangers: { holdPoints: ['H1'] },
  refer: ['kitUnfit', 'gasInHole'],
  worksLike: (f) => f.fact === 'detector.bumped' && f.passed && f.shownShare !== undefined,
  answers: task('changeDetector'),
  triggers: ['start'],
  is: (size) => size <= 0.5,
});
