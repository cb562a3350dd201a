import { advance, attempt, begin, read, type RecordEntry, type RunState } from '../run/index.ts';
import type { Hindrance, Action } from '../rig/index.ts';
import type { Scenario } from '../scenario/index.ts';
import { felt } from './felt.ts';
import { orderOf } from './order.ts';
import { seenOf } from './seen.ts';
import type { Hand, View } from './hand.ts';

/** What came of a hand's work: the record's entries, the run as it ended, and every act that was hindered. */
export interface Driven {
  readonly entries: readonly RecordEntry[];
  readonly run: RunState;
  readonly hindered: readonly {
    readonly atS: number;
    readonly action: Action;
    readonly hindrance: Hindrance;
  }[];
}

/** More steps than any hand needs: a hand that goes in circles is stopped here. */
const STEPS_MOST = 20000;

/**
 * Lets a hand perform an exercise. Every act waits until the hands are free again; a hand that returns, ends the run
 * or goes in circles is done. `watch` is called with the run after every step.
 */
export function drive(scenario: Scenario, hand: Hand, watch?: (run: RunState) => void): Driven {
  return driveFrom(begin(scenario), hand, watch);
}

/** The same from any moment of a run: the hand takes over there, and is told what was noticed before. */
export function driveFrom(from: RunState, hand: Hand, watch?: (run: RunState) => void): Driven {
  const entries: RecordEntry[] = [];
  const hindered: Driven['hindered'][number][] = [];
  let run = from.clockS < from.busyUntilS ? advance(from, from.busyUntilS) : from;
  // whoever takes over is told what was found before
  let told = 0;
  const view = (hindrance: Hindrance | null): View => {
    const facts = felt(run.facts.slice(told));
    told = run.facts.length;
    return { readings: read(run), rig: seenOf(run.rig), facts, hindrance };
  };
  const work = hand(orderOf(run.scenario), view(null));
  let next = work.next();
  for (let steps = 0; !next.done && run.rig.ending === null && steps < STEPS_MOST; steps += 1) {
    const step = next.value;
    let hindrance: Hindrance | null = null;
    if ('waitS' in step) run = advance(run, run.clockS + step.waitS);
    else {
      const { clockS } = run;
      const attempted = attempt(run, step);
      if ('hindrance' in attempted) {
        hindrance = attempted.hindrance;
        hindered.push({ atS: clockS, action: step, hindrance });
      } else {
        entries.push({ atS: clockS, action: step });
        run = advance(attempted.run, attempted.run.busyUntilS);
      }
    }
    watch?.(run);
    next = work.next(view(hindrance));
  }
  return { entries, run, hindered };
}
