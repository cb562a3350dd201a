import { act, pick, put, readGauge, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { testHeadOff, testHeadOn } from './proof.ts';
import { proveOnNewTee } from './recover/proof.ts';
import { seatSaddle } from './seating.ts';

const QUARTER_RAD = Math.PI / 2;
/** How far the keeper is turned back to break its bite. */
const BITE_TURNS = 1 / 12;

/** One tie-in; the keeper broken and snugged with two wrenches; the first-chamber rig on the new tee, proved. */
export function* joinAndProve(crew: Crew): Work {
  const tieIn = pick(crew, 'tieIn');
  yield* act(crew, { kind: 'sealant.apply', piece: tieIn });
  yield* put(crew, 'tieIn');
  yield* act(crew, { kind: 'keeper.turn', turns: -BITE_TURNS, holdBack: true });
  yield* act(crew, { kind: 'keeper.turn', turns: BITE_TURNS, holdBack: true });
  yield* put(crew, 'seatRing');
  yield* seatSaddle(crew, 'tee');
  yield* put(crew, 'isolationValve');
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* act(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
  yield* put(crew, 'upperSpool');
  yield* readGauge(crew, 'main');
  yield* testHeadOn(crew);
  yield* proveOnNewTee(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'R4' });
  yield* testHeadOff(crew);
}
