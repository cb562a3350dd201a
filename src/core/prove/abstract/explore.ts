import type { Scenario } from '../../scenario/index.ts';
import { sizedBy, type KitPiece } from '../../rig/index.ts';
import { begin, truePressures } from '../../run/index.ts';
import { keyOf } from './levels.ts';
import { moves, type Move } from './moves.ts';
import { rest, type Rested, type Stood } from './gas.ts';
import { step } from './step.ts';
import { nextToSafety, type Way } from './makeSafe.ts';

/** What a search of all that hands can do found. */
export interface Explored {
  /** Every state that could be reached was looked at: the queue came empty. */
  readonly closed: boolean;
  readonly states: number;
  readonly transitions: number;
  /** Ends in which somebody was hurt: no state of work, and so without a witness. */
  readonly harmful: number;
  /** States from which making safe leads to no safe ending. */
  readonly witnessFailures: number;
  /** Longest way to safety, moves. */
  readonly longestWitness: number;
  /** States whose only way out is to shut the main. */
  readonly byIsolation: number;
  /** Ways to reach some of the states without a witness, move by move, for whoever must mend the exercise. */
  readonly traps: readonly (readonly string[])[];
}

/** What is known before a search. */
export const notExplored: Explored = {
  closed: false,
  states: 0,
  transitions: 0,
  harmful: 0,
  witnessFailures: 0,
  longestWitness: 0,
  byIsolation: 0,
  traps: [],
};

export interface ExploreOptions {
  /** Stop after so many states. */
  readonly most?: number;
  readonly moves?: readonly Move[];
  /** Told every few thousand states; answers false to stop. */
  readonly goOn?: (states: number, waiting: number) => boolean;
}

const MOST_STATES = 2_000_000;
const TOLD_EVERY = 4096;
const TRAPS_TOLD = 5;

/** Way on from a state: the next state's number, or one of these. */
const SAFE = -1;
const NOWHERE = -2;
const ISOLATE = -3;

/**
 * Looks at every state the pieces that touch containment can be brought into, in any order, and asks of each whether
 * making safe leads from it to a safe ending. Breadth first; pure and deterministic.
 */
export function explore(scenario: Scenario, options: ExploreOptions = {}): Explored {
  const { limits } = scenario;
  const known = options.moves ?? moves;
  const most = options.most ?? MOST_STATES;
  const first = startOf(scenario);
  const numberOf = new Map<number, number>([[keyOf(first), 0]]);
  const queue: (Stood | null)[] = [first];
  const cameFrom: number[] = [-1];
  const cameBy: number[] = [-1];
  const way: number[] = [];
  const rested: Rested = new Map();
  let transitions = 0;
  let harmful = 0;
  let stopped = false;
  for (let at = 0; at < queue.length && !stopped; at += 1) {
    const here = queue[at];
    if (here === null) continue;
    queue[at] = null;
    const after = new Map<string, number>();
    for (let m = 0; m < known.length; m += 1) {
      const next = step(here, known[m], limits, rested);
      if (next === null) continue;
      if (next.rig.ending?.kind === 'hurt') {
        harmful += 1;
        continue;
      }
      if (next.rig.site.isolatedAtS !== null) {
        transitions += 1;
        after.set(known[m].id, ISOLATE);
        continue;
      }
      const key = keyOf(next);
      let number = numberOf.get(key);
      if (number === at) continue;
      transitions += 1;
      if (number === undefined) {
        number = queue.length;
        numberOf.set(key, number);
        queue.push(next);
        cameFrom.push(at);
        cameBy.push(m);
      }
      after.set(known[m].id, number);
    }
    way.push(onward(nextToSafety(here), after));
    if (queue.length > most) stopped = true;
    if (at % TOLD_EVERY === 0 && options.goOn?.(queue.length, queue.length - at) === false) stopped = true;
  }
  const trace = (state: number): readonly string[] => {
    const by: string[] = [];
    for (let i = state; cameFrom[i] >= 0; i = cameFrom[i]) by.unshift(known[cameBy[i]].id);
    return by;
  };
  return { closed: !stopped, states: queue.length, transitions, harmful, ...witnesses(way, trace) };
}

/** Where the search begins: as the crew takes over, cleaned where pieces will sit, with the pieces that may serve. */
export function startOf(scenario: Scenario): Stood {
  const run = begin(scenario);
  const { rig } = run;
  const cleaned = { ...rig.site.cleaned, boss: true, pipe: true, coupling: true };
  const kit: Record<string, KitPiece> = {};
  for (const piece of Object.values(rig.kit)) if (mayServe(scenario.job, piece)) kit[piece.id] = piece;
  const livePa = scenario.job.system.mainPressureGaugePa / 2;
  const pressures = truePressures(run);
  const live = (space: string): boolean => (pressures[space] ?? 0) > livePa;
  const gas = { barrel: live('barrel'), chamber: live('chamber'), above: live('above'), blowing: false };
  return rest({ rig: { ...rig, kit, site: { ...rig.site, cleaned } }, gas });
}

/** What no move would take up, since its size is not the job's, only makes the search slow. */
function mayServe({ workpiece, system }: Scenario['job'], piece: KitPiece): boolean {
  if (piece.where !== 'board') return true;
  const wanted = { tee: workpiece.teeSize, main: workpiece.mainNps, service: system.service.nps, one: null };
  const size = wanted[sizedBy[piece.kind]];
  return piece.trueSize === null || size === null || size === piece.trueSize;
}

/** The first of what making safe would do that a hand can do here. */
function onward(wanted: Way, after: ReadonlyMap<string, number>): number {
  if (wanted === 'safe') return SAFE;
  for (const id of wanted) {
    const number = after.get(id);
    if (number !== undefined) return number;
  }
  return NOWHERE;
}

/** Follows every state's way to its end; a way that comes back on itself leads nowhere. */
function witnesses(way: readonly number[], trace: (state: number) => readonly string[]) {
  const UNKNOWN = 0;
  const steps = new Int32Array(way.length).fill(UNKNOWN);
  const byMain = new Uint8Array(way.length);
  const failed: number[] = [];
  let longestWitness = 0;
  let byIsolation = 0;
  // a state the search was stopped before is neither a failure nor safe: what leads there is left out
  const endOf = (at: number, onPath: ReadonlySet<number>): { length: number; main: number } => {
    if (at === SAFE || at >= way.length) return { length: 1, main: 0 };
    if (at === ISOLATE) return { length: 1, main: 1 };
    if (at === NOWHERE || onPath.has(at)) return { length: -1, main: 0 };
    return { length: steps[at], main: byMain[at] };
  };
  for (let state = 0; state < way.length; state += 1) {
    const passed: number[] = [];
    let at = state;
    const onPath = new Set<number>();
    while (at >= 0 && at < way.length && steps[at] === UNKNOWN && !onPath.has(at)) {
      onPath.add(at);
      passed.push(at);
      at = way[at];
    }
    let { length, main } = endOf(at, onPath);
    for (let i = passed.length - 1; i >= 0; i -= 1) {
      const last = way[passed[i]] === SAFE || way[passed[i]] === ISOLATE;
      length = length < 0 ? -1 : last ? 1 : length + 1;
      if (length < 0) main = 0;
      steps[passed[i]] = length;
      byMain[passed[i]] = main;
    }
  }
  for (let state = 0; state < way.length; state += 1) {
    if (steps[state] < 0) failed.push(state);
    else longestWitness = Math.max(longestWitness, steps[state] - 1);
    byIsolation += byMain[state];
  }
  return {
    witnessFailures: failed.length,
    longestWitness,
    byIsolation,
    traps: failed.slice(0, TRAPS_TOLD).map(trace),
  };
}
