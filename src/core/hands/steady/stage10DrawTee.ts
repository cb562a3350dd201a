import { act, pick, put, StopWork, takeOff, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { mainRead } from './recover/main.ts';
import { testHeadOff } from './proof.ts';
import { airGood } from './stage01SetUp.ts';
import { barrelOnAndOpen, rodDown, rodUpAndBarrelOff } from './valveAndBleed.ts';

/** Everything to hand, then the tee unscrewed by its keeper and brought up through the rig. */
export function* drawTee(crew: Crew): Work {
  const goesIn = crew.order.work === 'abandon' ? 'closingPlug' : 'renewalTee';
  yield* act(crew, { kind: 'sealant.apply', piece: pick(crew, goesIn) });
  yield* act(crew, { kind: 'site.do', task: 'secondPerson' });
  yield* mainRead(crew);
  yield* airGood(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H10' });
  yield* testHeadOff(crew);
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* unscrew(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: null });
  yield* takeOff(crew, 'upperSpool');
  yield* put(crew, 'valveCap');
}

function* unscrew(crew: Crew): Work {
  for (let turns = 0; turns < 40; turns += 1) {
    const facts = yield* act(crew, { kind: 'rod.turn', turns: turns === 0 ? -1 / 8 : -1 / 2 });
    if (facts.some((fact) => fact.fact === 'tee.free')) return;
  }
  throw new StopWork('other');
}
