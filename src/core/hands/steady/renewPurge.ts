import { renewalLimits } from '../../procedure/index.ts';
import { act, fluidQuiet, lastOf, put, readGauge, StopWork, takeOff, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

/** Read this far above what is asked before the last minute is counted: the instrument moves in per cents. */
const OVER_SHARE = 0.02;
const TO_BE_SURE_S = 3;

/** Tie-in, plug and thread under fluid with gas; one flow to the riser until it is gas for a minute; relit by the list. */
export function* purgeAndRelight(crew: Crew): Work {
  const { leakWatchS, renewal } = crew.order.limits;
  const set = renewal ?? renewalLimits;
  yield* readGauge(crew, 'main');
  for (const at of ['tieIn', 'newPlug', 'teeThread'] as const) {
    if (!(yield* fluidQuiet(crew, at, leakWatchS + TO_BE_SURE_S))) throw new StopWork('proofFails');
  }
  yield* put(crew, 'purgeRiser');
  yield* act(crew, { kind: 'riser.turn', open: 1 });
  let share = 0;
  for (let looks = 0; looks < 60 && share < set.purgeShare + OVER_SHARE; looks += 1) {
    yield* wait(crew, 15);
    share = yield* readRiser(crew);
  }
  yield* wait(crew, set.purgeS + TO_BE_SURE_S);
  share = yield* readRiser(crew);
  if (share < set.purgeShare) throw new StopWork('other');
  crew.purgedShare = share;
  yield* act(crew, { kind: 'riser.turn', open: -1 });
  yield* takeOff(crew, 'purgeRiser');
  yield* act(crew, { kind: 'site.do', task: 'relightList' });
  yield* act(crew, { kind: 'sign', holdPoint: 'R6' });
  yield* act(crew, { kind: 'site.do', task: 'relight' });
}

function* readRiser(crew: Crew): Work<number> {
  const facts = yield* act(crew, { kind: 'riser.read' });
  return lastOf(facts, 'riser.read')?.gasShare ?? 0;
}
