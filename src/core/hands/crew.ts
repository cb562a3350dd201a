import {
  sizedBy,
  type Action,
  type GaugeName,
  type KitKind,
  type LeakPlace,
  type ReferReason,
} from '../rig/index.ts';
import type { Readings } from '../run/index.ts';
import type { FeltFact, FeltOf } from './felt.ts';
import type { KitSeen, Order } from './order.ts';
import type { View, Work } from './hand.ts';

/** Thrown inside a piece of work when the right thing is to stop and refer back. */
export class StopWork {
  readonly reason: ReferReason;
  constructor(reason: ReferReason) {
    this.reason = reason;
  }
}

/** What a crew carries along: the order, the last view, what it has read, and the pieces it has set aside. */
export interface Crew {
  readonly order: Order;
  view: View;
  mainReadingPa: number;
  /** What the head showed at each seat while its chamber stood at the main's pressure, Pa gauge: to be written down. */
  readonly proofPa: { tee: number; coupling: number };
  readonly setAside: Set<string>;
}

/** A crew at the beginning of its work, with what those before it read and set aside. */
export function crewOf(order: Order, first: View): Crew {
  const crew: Crew = {
    order,
    view: first,
    mainReadingPa: 0,
    proofPa: { tee: 0, coupling: 0 },
    setAside: new Set(),
  };
  for (const fact of first.facts) {
    if (fact.fact === 'gauge.read') keep(crew, fact);
    if (fact.fact === 'piece.rejected') crew.setAside.add(fact.piece);
  }
  return crew;
}

function keep(crew: Crew, { gauge, readingGaugePa, under }: FeltOf<'gauge.read'>): void {
  if (gauge === 'main') crew.mainReadingPa = readingGaugePa;
  const proved = gauge === 'head' && crew.mainReadingPa > 0 && readingGaugePa >= crew.mainReadingPa;
  if (proved && under.saddleOn !== 'board') crew.proofPa[under.saddleOn] = readingGaugePa;
}

/** Does something that must work; a hand that is hindered here cannot go on and refers back. */
export function* act(crew: Crew, action: Action): Work<readonly FeltFact[]> {
  const facts = yield* attemptTo(crew, action);
  if (facts === null) throw new StopWork('other');
  return facts;
}

/** Tries something; null where the hand is hindered. */
export function* attemptTo(crew: Crew, action: Action): Work<readonly FeltFact[] | null> {
  crew.view = yield action;
  return crew.view.hindrance === null ? crew.view.facts : null;
}

/** Waits so many seconds. */
export function* wait(crew: Crew, waitS: number): Work<readonly FeltFact[]> {
  crew.view = yield { waitS };
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

/** The piece to take for this job: of the right stamp, by its id. Without one the work stops. */
export function pick(crew: Crew, kind: KitKind, nth = 0): string {
  const { teeSize, mainNps, serviceNps } = crew.order;
  const stamped = { tee: teeSize, main: mainNps, service: serviceNps, one: null }[sizedBy[kind]];
  const piece = piecesOf(crew, kind, stamped).at(nth);
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
  const read = lastOf(facts, 'gauge.read');
  if (read !== null) keep(crew, read);
  return read?.readingGaugePa ?? 0;
}

/** Leak fluid at a place; true where no bubble shows. */
export function* fluidQuiet(crew: Crew, at: LeakPlace, watchS: number): Work<boolean> {
  const facts = yield* act(crew, { kind: 'leakFluid.apply', at, watchS });
  return lastOf(facts, 'leak.looked')?.bubbles === 'none';
}
