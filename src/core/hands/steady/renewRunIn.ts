import { renewalLimits } from '../../procedure/index.ts';
import { act, lastOf, pick, StopWork, takeOff, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { rigOff, shownTight } from './stage11Close.ts';
import {
  barrelOnAndOpen,
  lookDown,
  rodDown,
  rodUpAndBarrelOff,
  shutBleed,
  sightCapOff,
  spoolOff,
} from './valveAndBleed.ts';

/** From this torque the thread is past hand-tight, N·m. */
const HAND_TIGHT_NM = 4;
/** Turned on so far beyond the least that is asked, turns. */
const OVER_LEAST_TURNS = 0.1;
/** Heading is taken up until it is off by less than this, rad. */
const ON_HEADING_RAD = 0.09;

/** Threads seen, renewal tee lowered, run in and brought to its heading by going on; shown quiet; rig off. */
export function* runIn(crew: Crew): Work {
  yield* takeOff(crew, 'valveCap');
  yield* lookDown(crew);
  yield* sightCapOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: pick(crew, 'renewalTee') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* act(crew, { kind: 'rod.turn', turns: -1 / 4 });
  yield* toHeading(crew);
  if (!(yield* shownTight(crew))) throw new StopWork('proofFails');
  yield* act(crew, { kind: 'sign', holdPoint: 'R2' });
  yield* shutBleed(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* spoolOff(crew);
  yield* rigOff(crew);
}

/** Hand-tight, past it by the least that seals, then on to where the branch points right. */
function* toHeading(crew: Crew): Work {
  const [least] = (crew.order.limits.renewal ?? renewalLimits).pastHandTurns;
  let past = 0;
  let offRad = 0;
  for (let pulls = 0; pulls < 60 && past < least + OVER_LEAST_TURNS; pulls += 1) {
    const turns = past > 0 ? 1 / 6 : 1 / 3;
    const turned = yield* turnOn(crew, turns);
    if (turned.torqueNm >= HAND_TIGHT_NM) past += turns;
    offRad = turned.offHeadingRad;
  }
  for (let tries = 0; tries < 4 && Math.abs(offRad) > ON_HEADING_RAD; tries += 1) {
    const short = -offRad / (2 * Math.PI);
    const turned = yield* turnOn(crew, short > 0 ? short : short + 1);
    offRad = turned.offHeadingRad;
  }
  if (Math.abs(offRad) > ON_HEADING_RAD) throw new StopWork('other');
}

function* turnOn(crew: Crew, turns: number) {
  const facts = yield* act(crew, { kind: 'rod.turn', turns });
  const turned = lastOf(facts, 'renewal.turned');
  if (turned === null || turned.crossed) throw new StopWork('other');
  return turned;
}
