import { troubleFault } from '../troubleFault.ts';
import { task } from '../reactions.ts';

/** A detector that does not answer its test gas. */
export const detectorFailsBump = troubleFault({
  id: 'detectorFailsBump',
  family: 'kit',
  cause: 'age',
  what: 'detectorUnfit',
  severity: { low: 0.55, high: 1, usual: 1, unit: 'share' },
  endangers: { holdPoints: ['H1'] },
  refer: ['kitUnfit', 'gasInHole'],
  worksLike: (f) => f.fact === 'detector.bumped' && !f.passed,
  answers: task('changeDetector'),
  triggers: ['start'],
  is: (size) => size > 0.5,
  shares: ['H1.bump'],
});
