import { secondChamber } from '../../procedure/index.ts';
import { act, fluidQuiet, put, readGauge, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { proveChamber, testHeadOn, ventDown, watchRise } from './proof.ts';
import { seatSaddle } from './seating.ts';

const QUARTER_RAD = Math.PI / 2;
const BITE_TURNS = 1 / 12;
const BOLT_TURNS = 1 / 4;

/** Tee's bite broken and snugged, gasket and collar on, saddle over them, second chamber proved. */
export function* sealOnCoupling(crew: Crew): Work {
  yield* act(crew, { kind: 'clean', at: 'coupling' });
  const facts = yield* act(crew, { kind: 'look', at: 'gasketSeat' });
  if (!facts.some((fact) => fact.fact === 'looked' && fact.saw.face === 'sound')) throw new StopWork('other');
  yield* act(crew, { kind: 'sign', holdPoint: 'H8' });
  yield* breakTee(crew);
  yield* put(crew, 'cupGasket');
  yield* put(crew, 'splitCollar');
  for (let pulls = 0; pulls < 4; pulls += 1) {
    yield* act(crew, { kind: 'collarBolt.turn', bolt: 0, turns: BOLT_TURNS });
    yield* act(crew, { kind: 'collarBolt.turn', bolt: 1, turns: BOLT_TURNS });
  }
  yield* seatSaddle(crew, 'collar');
  yield* put(crew, 'lowerSpool');
  yield* put(crew, 'isolationValve');
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* act(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
  yield* put(crew, 'upperSpool');
  yield* readGauge(crew, 'main');
  yield* testHeadOn(crew);
  yield* watchRise(crew);
  yield* proveChamber(crew, secondChamber(crew.order.teeSize));
  yield* ventDown(crew);
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
