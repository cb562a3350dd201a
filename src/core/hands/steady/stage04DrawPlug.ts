import { act, pick, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { barrelOnAndOpen, rodDown, rodUpAndBarrelOff } from './valveAndBleed.ts';

/** Top plug unscrewed through the open valve, drawn up, shut in, bled, and taken to the bench. */
export function* drawPlug(crew: Crew): Work {
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* unscrew(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: null });
}

function* unscrew(crew: Crew): Work {
  for (let turns = 0; turns < 16; turns += 1) {
    const facts = yield* act(crew, { kind: 'rod.turn', turns: -1 });
    if (facts.some((fact) => fact.fact === 'plug.free')) return;
  }
  throw new StopWork('plugSeized');
}
