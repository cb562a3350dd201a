import type { ProofChamber } from '../../procedure/index.ts';
import type { LeakPlace } from '../../rig/index.ts';
import { psi } from '../../units/index.ts';
import { act, attemptTo, fluidQuiet, put, readGauge, takeOff, wait, waitUntil, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { mainRead } from './recover/main.ts';
import { easeOpen, shutValve } from './valveAndBleed.ts';

const QUARTER_RAD = Math.PI / 2;
/** Waited beyond each time asked for, s: a watch is not read to the second. */
const TO_BE_SURE_S = 3;
/** Aimed at above the main, Pa: clear of the gauge's own error and well under the limit. */
const ABOVE_MAIN_PA = psi(2.2);

/** Test head on, its vent shut, zero seen, the valve open so that the whole chamber is under test. */
export function* testHeadOn(crew: Crew): Work {
  yield* put(crew, 'testHead');
  yield* act(crew, { kind: 'gauge.zero', gauge: 'head' });
  yield* act(crew, { kind: 'vent.turn', open: -1 });
  yield* easeOpen(crew);
}

/** What a proof showed: it held, or where or how it did not. */
export type Shown =
  | 'held'
  | { readonly bubblesAt: LeakPlace }
  /** Pumping does not bring it up; it falls with no bubble anywhere; the valve's seat passes; it rises from nothing. */
  | 'neverBuilds'
  | 'falls'
  | 'valvePasses'
  | 'rises';

/** Low stage, fluid, main pressure, settle, hold, fluid, and the valve's own seat. */
export function* proveChamber(crew: Crew, chamber: ProofChamber): Work<Shown> {
  const { limits } = crew.order;
  const [low, high] = limits.lowStageGaugePa;
  if (!(yield* pumpTo(crew, (low + high) / 2))) return 'neverBuilds';
  yield* readGauge(crew, 'head');
  const early = yield* bubblesAt(crew, chamber);
  if (early !== null) return { bubblesAt: early };
  yield* mainRead(crew);
  if (!(yield* pumpTo(crew, crew.mainReadingPa + ABOVE_MAIN_PA))) return 'neverBuilds';
  yield* wait(crew, limits.settleS + TO_BE_SURE_S);
  const start = yield* readGauge(crew, 'head');
  const late = yield* bubblesAt(crew, chamber);
  if (late !== null) return { bubblesAt: late };
  yield* wait(crew, limits.holdS + TO_BE_SURE_S);
  const end = yield* readGauge(crew, 'head');
  if (start - end > limits.dropPa) return 'falls';
  return (yield* seatHolds(crew, chamber, end)) ? 'held' : 'valvePasses';
}

/** Pumps in short strokes until the head reads so much, Pa gauge; false where it never gets there. */
function* pumpTo(crew: Crew, targetPa: number): Work<boolean> {
  let last = -1;
  for (let pulls = 0; pulls < 80; pulls += 1) {
    const reading = crew.view.readings.headGaugePa ?? 0;
    if (reading >= targetPa) return true;
    if (pulls % 10 === 9) {
      if (reading <= last) return false;
      last = reading;
    }
    const far = targetPa - reading > psi(16);
    yield* act(crew, { kind: 'pump.stroke', strokes: far ? 5 : 1 });
    yield* wait(crew, 1);
  }
  return false;
}

/** The first place of the chamber at which leak fluid bubbles, or null. */
export function* bubblesAt(crew: Crew, chamber: ProofChamber): Work<LeakPlace | null> {
  for (const place of chamber.fluidAt) {
    if (!(yield* fluidQuiet(crew, place, 20))) return place;
  }
  return null;
}

/** Shut under pressure, vented above, joined again: the reading must come back to p(V − Va)/V. */
function* seatHolds(crew: Crew, chamber: ProofChamber, beforePa: number): Work<boolean> {
  yield* shutValve(crew);
  yield* ventDown(crew);
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* wait(crew, 5);
  const after = yield* readGauge(crew, 'head');
  const expected = (beforePa * (chamber.wholeM3 - chamber.aboveBallM3)) / chamber.wholeM3;
  return Math.abs(after - expected) <= crew.order.limits.seatTestPa;
}

/** Opens the vent until the gauge is down, then shuts it. */
export function* ventDown(crew: Crew): Work {
  yield* act(crew, { kind: 'vent.turn', open: 1 });
  yield* waitUntil(crew, ({ headGaugePa }) => (headGaugePa ?? 0) <= 0, 120);
  yield* wait(crew, 5);
  yield* act(crew, { kind: 'vent.turn', open: -1 });
}

/** Shut and watched from zero; a rise shows that something below is passing. */
export function* staysDown(crew: Crew): Work<boolean> {
  const { riseS, risePa } = crew.order.limits;
  const start = yield* readGauge(crew, 'head');
  yield* wait(crew, riseS + TO_BE_SURE_S);
  const end = yield* readGauge(crew, 'head');
  return end - start <= risePa;
}

/** The head off with the valve open: what a thread below lets by goes out freely and is not shut in under the ball. */
export function* headOffOpen(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* attemptTo(crew, { kind: 'vent.turn', open: 1 });
  yield* waitUntil(crew, ({ headGaugePa }) => (headGaugePa ?? 0) <= 0, 120);
  yield* wait(crew, 5);
  yield* takeOff(crew, 'testHead');
}

/** Valve shut, vent open, test head off. */
export function* testHeadOff(crew: Crew): Work {
  yield* shutValve(crew);
  yield* act(crew, { kind: 'vent.turn', open: 1 });
  yield* wait(crew, 5);
  yield* takeOff(crew, 'testHead');
}
