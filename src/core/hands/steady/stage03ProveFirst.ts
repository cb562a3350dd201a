import { firstChamber } from '../../procedure/index.ts';
import { act, readGauge, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { proveChamber, testHeadOff, testHeadOn, ventDown, watchRise } from './proof.ts';

/** The first chamber proved, vented and watched, then signed for. */
export function* proveFirst(crew: Crew): Work {
  yield* readGauge(crew, 'main');
  yield* testHeadOn(crew);
  yield* proveChamber(crew, firstChamber);
  yield* ventDown(crew);
  yield* watchRise(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H2' });
  yield* testHeadOff(crew);
}
