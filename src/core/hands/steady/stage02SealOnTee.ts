import { act, attemptTo, fluidQuiet, lastOf, put, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { cradleMain, seatSaddle } from './seating.ts';
import { bossFit } from './stage01SetUp.ts';

const QUARTER_RAD = Math.PI / 2;
/** How far the old bite is turned back to break it: within the eighth of a turn that is allowed. */
const BITE_TURNS = 1 / 12;
/** From this torque an old plug is left alone, N·m (assumed). */
const SEIZED_NM = 300;

/** Bare metal, the plug's bite broken and snugged, ring, saddle, chains and valve. */
export function* sealOnTee(crew: Crew): Work {
  yield* act(crew, { kind: 'clean', at: 'boss' });
  yield* act(crew, { kind: 'clean', at: 'pipe' });
  yield* act(crew, { kind: 'clean', at: 'coupling' });
  yield* bossFit(crew);
  yield* act(crew, { kind: 'look', at: 'coupling' });
  yield* breakPlug(crew);
  yield* put(crew, 'seatRing');
  yield* cradleMain(crew);
  yield* put(crew, 'chain', 0);
  yield* put(crew, 'chain', 1);
  yield* seatSaddle(crew, 'tee');
  yield* put(crew, 'isolationValve');
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* act(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}

function* breakPlug(crew: Crew): Work {
  yield* act(crew, { kind: 'mark', at: 'plug' });
  const broken = yield* attemptTo(crew, { kind: 'plug.turn', turns: -BITE_TURNS, holdBack: true });
  const feltNm = broken === null ? SEIZED_NM : (lastOf(broken, 'plug.turned')?.torqueNm ?? 0);
  if (feltNm >= SEIZED_NM) throw new StopWork('plugSeized');
  yield* act(crew, { kind: 'plug.turn', turns: BITE_TURNS, holdBack: true });
  for (let snugs = 0; snugs < 3; snugs += 1) {
    if (yield* fluidQuiet(crew, 'plug', 30)) return;
    yield* act(crew, { kind: 'plug.turn', turns: 1 / 24, holdBack: true });
  }
  throw new StopWork('proofFails');
}
