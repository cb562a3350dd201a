import { act, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { look, lookDown, sightCapOff } from './valveAndBleed.ts';

/** A look down the bore; scale is cleared and looked for again. */
export function* lookBore(crew: Crew): Work {
  const saw = yield* lookDown(crew);
  if (saw.boreClear === false) {
    yield* act(crew, { kind: 'clean', at: 'bore' });
    const again = yield* look(crew);
    if (again.boreClear === false) throw new StopWork('stopFails');
  }
  yield* act(crew, { kind: 'sign', holdPoint: 'H3' });
  yield* sightCapOff(crew);
}
