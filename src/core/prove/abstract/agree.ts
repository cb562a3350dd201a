import type { Scenario } from '../../scenario/index.ts';
import { advance, attempt, begin, truePressures, type RunState } from '../../run/index.ts';
import { hashNoise } from '../../units/index.ts';
import { type Gas, type Stood } from './gas.ts';
import { keyOf, levels, wordLevels } from './levels.ts';
import { moves, type Move } from './moves.ts';
import { step } from './step.ts';
import { startOf } from './explore.ts';

/** One move after which the search and the real run do not stand alike. */
export interface Disagreement {
  readonly path: readonly string[];
  readonly says: string;
}

/** How far the search's moves are what a real run does. */
export interface Agreement {
  /** Sampled paths, one move longer than another each; and moves compared. */
  readonly paths: number;
  readonly compared: number;
  /** Moves the search allows and a hand cannot do, or the other way about. */
  readonly disagreements: readonly Disagreement[];
}

interface Node {
  readonly run: RunState;
  readonly shadow: Stood;
  readonly path: readonly string[];
}

/** Gas is given so long to come to rest after a move, s: an hour, or, while it blows, a few minutes. */
const SETTLE_S = 3600;
const BLOWING_S = 240;
/** Longest path tried. */
const LONGEST = 24;

/**
 * Plays sampled paths twice, by the search's step and by the real `attempt` and `advance`, and compares after every
 * move. Paths branch off one another, so that each costs one move. Gas is compared where none blows: while it blows,
 * where it stands between the main and the street is a matter of openings, not of levels.
 */
export function agree(scenario: Scenario, paths: number, seed = 1): Agreement {
  const nodes: Node[] = [{ run: prepared(scenario), shadow: startOf(scenario), path: [] }];
  const disagreements: Disagreement[] = [];
  let compared = 0;
  for (let i = 0; compared < paths && i < 40 * paths; i += 1) {
    const from = nodes[pick(nodes.length, seed, `node${i}`)];
    const move = moves[pick(moves.length, seed, `move${i}`)];
    const shadow = step(from.shadow, move, scenario.limits);
    const run = playReally(from.run, move, shadow?.gas.blowing === true ? BLOWING_S : SETTLE_S);
    if (shadow === null && run === null) continue;
    compared += 1;
    const path = [...from.path, move.id];
    const says = differs(shadow, run);
    if (says !== null) disagreements.push({ path, says });
    else if (shadow !== null && run !== null && run.rig.ending === null && path.length < LONGEST)
      nodes.push({ run, shadow, path });
  }
  return { paths: nodes.length - 1 + disagreements.length, compared, disagreements };
}

function pick(count: number, seed: number, name: string): number {
  return Math.min(count - 1, Math.floor(((hashNoise(seed, name, 0) + 1) / 2) * count));
}

function prepared(scenario: Scenario): RunState {
  let run = begin(scenario);
  for (const at of ['boss', 'pipe', 'coupling'] as const) {
    const cleaned = attempt(run, { kind: 'clean', at });
    if ('run' in cleaned) run = advance(cleaned.run, cleaned.run.busyUntilS);
  }
  return run;
}

function playReally(from: RunState, move: Move, settleS: number): RunState | null {
  let run = from;
  let done = 0;
  const acts = move.acts(() => run.rig, run.scenario.limits);
  for (let next = acts.next(); !next.done;) {
    const attempted = attempt(run, next.value);
    if ('hindrance' in attempted) {
      next = acts.next(attempted.hindrance);
      continue;
    }
    done += 1;
    run = advance(attempted.run, attempted.run.busyUntilS);
    if (run.rig.ending !== null) break;
    next = acts.next(null);
  }
  return done === 0 ? null : advance(run, run.clockS + settleS);
}

/** What is not alike, or null. */
function differs(shadow: Stood | null, run: RunState | null): string | null {
  if (shadow === null || run === null) return shadow === null ? 'only a real hand can' : 'no real hand can';
  const hurt = shadow.rig.ending !== null;
  // a crew can come to harm by the air of the hole as well, which the search leaves out
  if (hurt || run.rig.ending !== null) return hurt && run.rig.ending === null ? 'the search sees harm' : null;
  const real: Stood = { rig: run.rig, gas: shadow.gas.blowing ? shadow.gas : gasOf(run, shadow.gas) };
  if (keyOf(real) === keyOf(shadow)) return null;
  const apart = levels.filter((level) => level.of(real.rig, real.gas) !== level.of(shadow.rig, shadow.gas));
  return apart
    .map((l) => `${l.piece}: ${wordLevels(l, shadow)} by the search, ${wordLevels(l, real)} really`)
    .join('; ');
}

/** Levels of the real gas: live from half the main's pressure on. */
function gasOf(run: RunState, like: Gas): Gas {
  const pressures = truePressures(run);
  const livePa = run.scenario.job.system.mainPressureGaugePa / 2;
  const live = (cell: string): boolean => (pressures[cell] ?? 0) > livePa;
  return { barrel: live('barrel'), chamber: live('chamber'), above: live('above'), blowing: like.blowing };
}
