import { LOW_MAIN_PA } from '../../procedure/index.ts';
import type { Measure } from '../../rig/index.ts';
import { act, lastOf, pick, readGauge, StopWork, takeOff, wait, waitUntil, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { stoppedAtLast, type StopShown } from './recover/stopper.ts';
import {
  barrelOnAndOpen,
  bleedAboveValve,
  diesAway,
  lookDown,
  openBleed,
  rodDown,
  rodUp,
  shutBleed,
  shutValve,
  sightCapOff,
} from './valveAndBleed.ts';

/** Where the washer is to stand below the port, m: the middle of what is allowed. */
const BELOW_PORT_M = 0.0042;
/** Aimed at a little above the middle of what is firm, N·m, and the rod's own drag felt besides (assumed). */
const ABOVE_MIDDLE_NM = 0.05;
const DRAG_NM = 0.4;
const FINE_TURN = 1 / 12;
const TO_BE_SURE_S = 3;
/** Share of a low main's pressure that the manometer may rise by while shut in (the operator's, as for the ear). */
const COLUMN_SHARE = 0.1;
const SNUGS_MOST = 3;
/** A bleed that hisses for so much longer than it should empties more than the service on the order. */
const LONG_HISS_SHARE = 1.3;
/** A puff that is not gone by then is no puff, s. */
const PUFF_MOST_S = 30;

/** Stopper measured for, lowered, firmed, shown by the bleed, let go, and looked at. */
export function* stopBore(crew: Crew): Work {
  yield* act(crew, { kind: 'mark', at: 'portLine' });
  yield* stoppedAtLast(crew, tryStop);
  yield* act(crew, { kind: 'sign', holdPoint: 'H4' });
  yield* letGo(crew);
  yield* lookAtStopper(crew);
}

function* tryStop(crew: Crew): Work<StopShown> {
  yield* loadStopper(crew);
  yield* barrelOnAndOpen(crew);
  yield* rodDown(crew);
  if (crew.view.rig.rod.load !== 'stopper') return 'dropped';
  if (!(yield* firmUp(crew))) return 'tears';
  return (yield* proveStop(crew)) ? 'holds' : 'passes';
}

/** Four measures give the travel; the depth collar is clamped there. */
function* loadStopper(crew: Crew): Work {
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'stopperHolder') });
  const stack = yield* measured(crew, 'stackHeight');
  const seat = yield* measured(crew, 'seatToBoss');
  const port = yield* measured(crew, 'bossToPort');
  const tip = yield* measured(crew, 'tipOffset');
  yield* act(crew, { kind: 'rod.load', piece: pick(crew, 'boreStopper') });
  yield* act(crew, { kind: 'collar.set', travelM: stack + seat + port - tip + BELOW_PORT_M });
}

/** A length taken twice, the mean of the two: four lengths add up, and a rule alone is a millimetre out. */
function* measured(crew: Crew, what: Measure): Work<number> {
  const first = yield* ruled(crew, what);
  const second = yield* ruled(crew, what);
  return (first + second) / 2;
}

function* ruled(crew: Crew, what: Measure): Work<number> {
  const facts = yield* act(crew, { kind: 'measure', what });
  const read = lastOf(facts, 'measured');
  if (read === null) throw new StopWork('other');
  return read.readingM;
}

/** Inner rod by half turns while it is easy, then by twelfths until it feels firm; false where the rubber gives way. */
function* firmUp(crew: Crew): Work<boolean> {
  const [lowNm, highNm] = crew.order.limits.stopperFirmNm;
  const firm = (lowNm + highNm) / 2 + ABOVE_MIDDLE_NM + DRAG_NM;
  let feltNm = 0;
  for (let pulls = 0; pulls < 80 && feltNm < firm; pulls += 1) {
    const turns = feltNm < DRAG_NM + (firm - DRAG_NM) / 4 ? 6 * FINE_TURN : FINE_TURN;
    const facts = yield* act(crew, { kind: 'innerRod.turn', turns });
    if (facts.some((fact) => fact.fact === 'stopper.torn')) return false;
    feltNm = lastOf(facts, 'stopper.squeezed')?.torqueNm ?? 0;
  }
  return feltNm >= firm;
}

/**
 * The bleed must hiss first, then die; quiet a minute, snugged again, shut two minutes, opened: no puff. One that puffs
 * is snugged a little and heard out again, as long as the rubber may be squeezed on.
 */
function* proveStop(crew: Crew): Work<boolean> {
  const { limits } = crew.order;
  const hissedS = yield* diesAway(crew);
  if (hissedS === null || hissedS < limits.hissShare * limits.expectedHissS) return false;
  // more gas than the order knows of lies behind the tee: others must hear of it
  if (hissedS > LONG_HISS_SHARE * limits.expectedHissS)
    yield* act(crew, { kind: 'site.do', task: 'callGasControl' });
  for (let tries = 0; tries < SNUGS_MOST; tries += 1) {
    yield* wait(crew, limits.quietS + TO_BE_SURE_S);
    const facts = yield* act(crew, { kind: 'innerRod.turn', turns: FINE_TURN });
    yield* shutBleed(crew);
    const risePa = yield* watchedRisePa(crew, limits.shutS + TO_BE_SURE_S);
    const puff = yield* openBleed(crew);
    if (crew.mainReadingPa < LOW_MAIN_PA ? risePa <= COLUMN_SHARE * crew.mainReadingPa : !puff) return true;
    yield* waitUntil(crew, (readings) => !readings.bleedHeard, PUFF_MOST_S);
    const feltNm = lastOf(facts, 'stopper.squeezed')?.torqueNm ?? 0;
    if (feltNm > limits.stopperFirmNm[1] + DRAG_NM) return false;
  }
  return false;
}

/** Shut in so long; on a low main the manometer is read before and after. How far it rose, Pa. */
function* watchedRisePa(crew: Crew, shutS: number): Work<number> {
  if (crew.mainReadingPa >= LOW_MAIN_PA) {
    yield* wait(crew, shutS);
    return 0;
  }
  const before = yield* readGauge(crew, 'manometer');
  yield* wait(crew, shutS);
  return (yield* readGauge(crew, 'manometer')) - before;
}

/** Collar freed, holder unlatched clockwise, rod up, valve shut, bled, barrel off. */
function* letGo(crew: Crew): Work {
  yield* act(crew, { kind: 'collar.set', travelM: null });
  const facts = yield* act(crew, { kind: 'rod.turn', turns: 1 / 4 });
  if (!facts.some((fact) => fact.fact === 'stopper.left')) throw new StopWork('stopFails');
  yield* rodUp(crew);
  yield* shutBleed(crew);
  yield* shutValve(crew);
  yield* bleedAboveValve(crew);
  yield* takeOff(crew, 'rodBarrel');
}

function* lookAtStopper(crew: Crew): Work {
  const { stopperBelowPortM, lookQuietS } = crew.order.limits;
  const saw = yield* lookDown(crew);
  const below = saw.stopperBelowPortM ?? -1;
  const placed = below >= stopperBelowPortM[0] && below <= stopperBelowPortM[1];
  if (!saw.stopperSeen || !saw.stopperSquare || !saw.stopperDry || !placed) throw new StopWork('stopFails');
  yield* openBleed(crew);
  yield* wait(crew, lookQuietS + TO_BE_SURE_S);
  const heard = yield* act(crew, { kind: 'listen' });
  if (lastOf(heard, 'listened')?.heard !== false) throw new StopWork('stopFails');
  yield* act(crew, { kind: 'sign', holdPoint: 'H5' });
  yield* shutBleed(crew);
  yield* sightCapOff(crew);
}
