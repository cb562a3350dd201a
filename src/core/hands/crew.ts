import { sizedBy, type Action, type GaugeName, type KitKind, type LeakPlace } from '../rig/index.ts';
import type { Readings } from '../run/index.ts';
import { clearAir, freshenAir, mustLeave } from './alarm.ts';
import type { FeltFact, FeltOf } from './felt.ts';
import type { Work } from './hand.ts';
import { answers } from './signs.ts';
import { remember, StopWork, type Crew } from './memory.ts';
import type { KitSeen } from './order.ts';

export { crewOf, StopWork, type Crew } from './memory.ts';

/** Does something that must work; a hand that is hindered here cannot go on and refers back. */
export function* act(crew: Crew, action: Action): Work<readonly FeltFact[]> {
  const facts = yield* attemptTo(crew, action);
  if (facts === null) throw new StopWork('other');
  return facts;
}

/** Tries something; null where the hand is hindered. At the high alarm the hole is left first, until the air is fit. */
export function* attemptTo(crew: Crew, action: Action): Work<readonly FeltFact[] | null> {
  if (mustLeave(crew, action)) yield* clearAir(crew);
  yield* freshenAir(crew);
  crew.view = yield action;
  remember(crew, crew.view.facts);
  const { hindrance, facts } = crew.view;
  yield* answerSigns(crew);
  return hindrance === null ? facts : null;
}

/** Does at once what a sign of trouble asks for, once each; some end the work. What hindered the last act stays in view. */
function* answerSigns(crew: Crew): Work {
  if (!crew.answersSigns || crew.signs.size === 0) return;
  const { hindrance } = crew.view;
  for (const sign of [...crew.signs]) {
    crew.signs.delete(sign);
    crew.answered.add(sign);
    const answer = answers[sign];
    if (answer === undefined) continue;
    if ('stop' in answer) throw new StopWork(answer.stop);
    yield* attemptTo(crew, answer);
  }
  crew.view = { ...crew.view, hindrance };
}

/** A look round the hole and along the hose: what has changed there since is answered before the work goes on. */
export function* lookRound(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'look', at: 'around' });
  yield* attemptTo(crew, { kind: 'look', at: 'hose' });
}

/** Waits so many seconds. */
export function* wait(crew: Crew, waitS: number): Work<readonly FeltFact[]> {
  crew.view = yield { waitS };
  remember(crew, crew.view.facts);
  return crew.view.facts;
}

/** Waits in whole seconds until the readings say so, at most so long; how long it took, s. */
export function* waitUntil(crew: Crew, good: (readings: Readings) => boolean, mostS: number): Work<number> {
  let waitedS = 0;
  while (!good(crew.view.readings) && waitedS < mostS) {
    yield* wait(crew, 1);
    waitedS += 1;
  }
  return waitedS;
}

/** The last fact of a kind among these, or null. */
export function lastOf<K extends FeltFact['fact']>(facts: readonly FeltFact[], kind: K): FeltOf<K> | null {
  const found = facts.filter((fact): fact is FeltOf<K> => fact.fact === kind);
  return found.at(-1) ?? null;
}

/** Pieces of a kind that may be used: of the stamp asked for, and not set aside. */
export function piecesOf(crew: Crew, kind: KitKind, stamped: string | null = null): readonly KitSeen[] {
  return crew.order.kit.filter(
    (k) => k.kind === kind && (stamped === null || k.stamped === stamped) && !crew.setAside.has(k.id),
  );
}

/** The size a kind of piece must be stamped with for this job; null where it is made in one. */
export function sizeOf({ order }: Crew, kind: KitKind): string | null {
  const { teeSize, mainNps, serviceNps } = order;
  return { tee: teeSize, main: mainNps, service: serviceNps, one: null }[sizedBy[kind]];
}

/** The piece to take for this job: of the right stamp, by its id. Without one the work stops. */
export function pick(crew: Crew, kind: KitKind, nth = 0): string {
  const piece = piecesOf(crew, kind, sizeOf(crew, kind)).at(nth);
  if (!piece) throw new StopWork('other');
  return piece.id;
}

/** Puts a piece in its place, holding back on what stands below. */
export function* put(crew: Crew, kind: KitKind, nth = 0): Work<readonly FeltFact[]> {
  return yield* act(crew, { kind: 'piece.place', piece: pick(crew, kind, nth), holdBack: true });
}

/** Takes a piece off, holding back on what stands below. */
export function* takeOff(crew: Crew, kind: KitKind, nth = 0): Work<readonly FeltFact[]> {
  return yield* act(crew, { kind: 'piece.remove', piece: pick(crew, kind, nth), holdBack: true });
}

/** Reads a gauge and keeps the figure, Pa gauge. */
export function* readGauge(crew: Crew, gauge: GaugeName): Work<number> {
  const facts = yield* act(crew, { kind: 'gauge.read', gauge });
  return lastOf(facts, 'gauge.read')?.readingGaugePa ?? 0;
}

/** Leak fluid at a place; true where no bubble shows. */
export function* fluidQuiet(crew: Crew, at: LeakPlace, watchS: number): Work<boolean> {
  const facts = yield* act(crew, { kind: 'leakFluid.apply', at, watchS });
  return lastOf(facts, 'leak.looked')?.bubbles === 'none';
}
