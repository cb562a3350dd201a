import { sizedFault } from '../pieceFault.ts';
import { anyOf, act, isolated } from '../reactions.ts';

/** A gasket that leaks more than this has given way, m². */
const BLOWN_FROM_M2 = 1.5e-6;

/** The cup gasket gives way with the tee out: plug at once, or clear out and shut the main. */
export const gasketBlows = sizedFault({
  id: 'gasketBlows',
  family: 'kit',
  cause: 'wear',
  on: ['cupGasket'],
  flaw: 'pinchedCdAM2',
  severity: { low: 2e-6, high: 5e-5, usual: 8e-6, unit: 'm2' },
  worksLike: (f) => f.fact === 'blow.began' && f.from.startsWith('seat'),
  holdPoints: ['H11'],
  answers: anyOf(
    act('rod.load', (a) => a.kind === 'rod.load' && a.piece !== null),
    act('leaveHole'),
    isolated,
  ),
  refer: ['gasInHole', 'siteUnsafe'],
  costs: 'gasLost',
  triggers: ['condition', 'time', 'action'],
  is: (size) => size > BLOWN_FROM_M2,
});
