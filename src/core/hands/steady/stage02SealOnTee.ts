import { act, attemptTo, fluidQuiet, lastOf, put, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { teeSeat } from './recover/seats.ts';
import { cradleMain } from './seating.ts';
import { bossFit } from './stage01SetUp.ts';

/** How far the old bite is turned back to break it: within the eighth of a turn that is allowed. */
const BITE_TURNS = 1 / 12;
/** From this torque an old plug is left alone, N·m (assumed). */
const SEIZED_NM = 300;
/** Oil is given so long to soak in, s, and put on so often before the plug is left alone. */
const SOAKING_S = 1800;
const OILINGS_MOST = 2;

/** Bare metal, the plug's bite broken and snugged, ring, saddle, chains and valve. */
export function* sealOnTee(crew: Crew): Work {
  yield* act(crew, { kind: 'clean', at: 'boss' });
  yield* act(crew, { kind: 'clean', at: 'pipe' });
  yield* act(crew, { kind: 'clean', at: 'coupling' });
  yield* bossFit(crew);
  yield* act(crew, { kind: 'look', at: 'coupling' });
  yield* breakPlug(crew);
  yield* cradleMain(crew);
  yield* put(crew, 'chain', 0);
  yield* put(crew, 'chain', 1);
  yield* teeSeat.on(crew);
}

/**
 * The old bite broken and snugged again. A plug that no wrench moves gets oil and time; one that gives only to a pull
 * that would harm the tee is left to others.
 */
function* breakPlug(crew: Crew): Work {
  yield* act(crew, { kind: 'mark', at: 'plug' });
  yield* brokenLoose(crew);
  yield* act(crew, { kind: 'plug.turn', turns: BITE_TURNS, holdBack: true });
  for (let snugs = 0; snugs < 3; snugs += 1) {
    if (yield* fluidQuiet(crew, 'plug', 30)) return;
    yield* act(crew, { kind: 'plug.turn', turns: 1 / 24, holdBack: true });
  }
  throw new StopWork('proofFails');
}

function* brokenLoose(crew: Crew): Work {
  for (let oilings = 0; ; oilings += 1) {
    const { turnsBack } = crew.view.rig.plug;
    const broken = yield* attemptTo(crew, { kind: 'plug.turn', turns: -BITE_TURNS, holdBack: true });
    const feltNm = broken === null ? SEIZED_NM : (lastOf(broken, 'plug.turned')?.torqueNm ?? 0);
    const moved = crew.view.rig.plug.turnsBack !== turnsBack;
    if (feltNm < SEIZED_NM && moved) return;
    if (moved || oilings === OILINGS_MOST) throw new StopWork('plugSeized');
    yield* act(crew, { kind: 'oil.apply', at: 'plug' });
    yield* wait(crew, SOAKING_S);
  }
}
