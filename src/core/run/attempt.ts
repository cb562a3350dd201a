import { act, handS, type Action, type FactBody, type Hindrance, type RigState } from '../rig/index.ts';
import { changed } from './changed.ts';
import { viewGas } from './gas.ts';
import { senseOf } from './sense.ts';
import { book, raise, relay, struck } from './settle.ts';
import { cutAt, SNAP_S } from './step.ts';
import { strikesNow } from './struck.ts';
import type { Attempted, RunState } from './types.ts';

/** The run with its gas brought to the clock, for something to be done now. */
function atClock(run: RunState): RunState {
  return run.gas.atS === run.clockS ? run : book(run, cutAt(run, run.clockS));
}

function outcomeOf(run: RunState, action: Action) {
  return act(run.rig, action, senseOf(run, viewGas(run.network, run.gas, run.clockS), run.clockS, run.air));
}

/**
 * A hand tries an action at the run's clock. Accepted: the run with the action's facts, hands busy until
 * `busyUntilS`. Hindered: why. The run given is never changed.
 */
export function attempt(run: RunState, action: Action): Attempted {
  if (run.rig.ending !== null) return { hindrance: 'ended' };
  if (run.clockS < run.busyUntilS) return { hindrance: 'busy' };
  const now = atClock(run);
  const outcome = outcomeOf(now, action);
  if (typeof outcome === 'string') return { hindrance: outcome };
  // what touches neither cells nor links leaves the integrator where it was
  const touched = touchesGas(run.rig, outcome.rig);
  const laid = touched ? relay(now, outcome.rig, now.clockS) : changed(run, { rig: outcome.rig });
  const done: FactBody = { fact: 'done', action };
  const told = raise(laid, now.clockS, [done, ...outcome.facts]);
  const acted = changed(told, { busyUntilS: now.clockS + handS(action), actions: run.actions + 1 });
  return { run: strikeAfter(acted, run.facts.length) };
}

/** Faults that the action sets off strike once it is done, with the gas brought to the clock first. */
function strikeAfter(run: RunState, factsBefore: number): RunState {
  if (strikesNow(run, factsBefore, run.clockS, SNAP_S).length === 0) return run;
  return struck(atClock(run), factsBefore, run.clockS);
}

/** Whether a hand could do it now, without doing it: null, or what would hinder. */
export function could(run: RunState, action: Action): Hindrance | null {
  if (run.rig.ending !== null) return 'ended';
  const outcome = outcomeOf(atClock(run), action);
  return typeof outcome === 'string' ? outcome : null;
}

const gasKeys = [
  'plug',
  'tee',
  'branch',
  'seatRing',
  'collar',
  'saddle',
  'chains',
  'stack',
  'valve',
  'testHead',
  'bleed',
  'hose',
  'rod',
  'stopper',
  'keeper',
  'closing',
  'renewal',
  'line',
  'testSet',
  'ending',
] as const satisfies readonly (keyof RigState)[];

function touchesGas(before: RigState, after: RigState): boolean {
  return (
    gasKeys.some((key) => before[key] !== after[key]) ||
    before.site.curbOpen !== after.site.curbOpen ||
    before.site.mainIsolated !== after.site.mainIsolated ||
    before.site.cleaned !== after.site.cleaned
  );
}
