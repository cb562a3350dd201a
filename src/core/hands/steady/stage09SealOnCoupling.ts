import { act, fluidQuiet, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { testHeadOn } from './proof.ts';
import { mainRead } from './recover/main.ts';
import { proveOnCoupling } from './recover/proof.ts';
import { collarSeat } from './recover/seats.ts';

const BITE_TURNS = 1 / 12;
/** Oil is given so long to soak in, s, and put on so often. */
const SOAKING_S = 1800;
const OILINGS_MOST = 2;

/** Tee's bite broken and snugged, gasket and collar on, saddle over them, second chamber proved. */
export function* sealOnCoupling(crew: Crew): Work {
  yield* act(crew, { kind: 'clean', at: 'coupling' });
  const facts = yield* act(crew, { kind: 'look', at: 'gasketSeat' });
  if (!facts.some((fact) => fact.fact === 'looked' && fact.saw.face === 'sound')) throw new StopWork('other');
  yield* act(crew, { kind: 'sign', holdPoint: 'H8' });
  yield* breakTee(crew);
  yield* collarSeat.on(crew);
  yield* mainRead(crew);
  yield* testHeadOn(crew);
  yield* proveOnCoupling(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H9' });
}

/** At most an eighth of a turn back, then snug again; leak fluid on thread and weld. */
function* breakTee(crew: Crew): Work {
  yield* act(crew, { kind: 'mark', at: 'tee' });
  yield* brokenLoose(crew);
  yield* act(crew, { kind: 'tee.turn', turns: BITE_TURNS, holdBack: true });
  for (let snugs = 0; snugs < 3; snugs += 1) {
    if (!(yield* fluidQuiet(crew, 'weld', 30))) throw new StopWork('weldLeaks');
    if (yield* fluidQuiet(crew, 'teeThread', 30)) return;
    yield* act(crew, { kind: 'tee.turn', turns: 1 / 24, holdBack: true });
  }
  throw new StopWork('proofFails');
}

/** A tee that no wrench moves gets oil and time before it is left to others. */
function* brokenLoose(crew: Crew): Work {
  for (let oilings = 0; ; oilings += 1) {
    const { turnsBack } = crew.view.rig.tee;
    yield* act(crew, { kind: 'tee.turn', turns: -BITE_TURNS, holdBack: true });
    if (crew.view.rig.tee.turnsBack !== turnsBack) return;
    if (oilings === OILINGS_MOST) throw new StopWork('teeSeized');
    yield* act(crew, { kind: 'oil.apply', at: 'tee' });
    yield* wait(crew, SOAKING_S);
  }
}
