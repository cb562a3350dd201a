import { act, fluidQuiet, readGauge, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { testHeadOn } from './proof.ts';
import { proveOnCoupling } from './recover/proof.ts';
import { collarSeat } from './recover/seats.ts';

const BITE_TURNS = 1 / 12;

/** Tee's bite broken and snugged, gasket and collar on, saddle over them, second chamber proved. */
export function* sealOnCoupling(crew: Crew): Work {
  yield* act(crew, { kind: 'clean', at: 'coupling' });
  const facts = yield* act(crew, { kind: 'look', at: 'gasketSeat' });
  if (!facts.some((fact) => fact.fact === 'looked' && fact.saw.face === 'sound')) throw new StopWork('other');
  yield* act(crew, { kind: 'sign', holdPoint: 'H8' });
  yield* breakTee(crew);
  yield* collarSeat.on(crew);
  yield* readGauge(crew, 'main');
  yield* testHeadOn(crew);
  yield* proveOnCoupling(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H9' });
}

/** At most an eighth of a turn back, then snug again; leak fluid on thread and weld. */
function* breakTee(crew: Crew): Work {
  yield* act(crew, { kind: 'mark', at: 'tee' });
  yield* act(crew, { kind: 'tee.turn', turns: -BITE_TURNS, holdBack: true });
  yield* act(crew, { kind: 'tee.turn', turns: BITE_TURNS, holdBack: true });
  for (let snugs = 0; snugs < 3; snugs += 1) {
    const quiet = (yield* fluidQuiet(crew, 'teeThread', 30)) && (yield* fluidQuiet(crew, 'weld', 30));
    if (quiet) return;
    yield* act(crew, { kind: 'tee.turn', turns: 1 / 24, holdBack: true });
  }
  throw new StopWork('proofFails');
}
