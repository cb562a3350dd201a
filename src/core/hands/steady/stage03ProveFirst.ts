import { act, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { testHeadOff, testHeadOn } from './proof.ts';
import { mainRead } from './recover/main.ts';
import { proveOnTee } from './recover/proof.ts';

/** The first chamber proved, vented and watched, then signed for. */
export function* proveFirst(crew: Crew): Work {
  yield* mainRead(crew);
  yield* testHeadOn(crew);
  yield* proveOnTee(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H2' });
  yield* testHeadOff(crew);
}
