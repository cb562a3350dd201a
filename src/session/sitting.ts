import { createActor } from 'xstate';
import { advance, attempt, begin, could, read } from '../core/run/index.ts';
import type { Action, Fact, Hindrance } from '../core/rig/index.ts';
import type { Readings, RecordEntry, RunState } from '../core/run/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { UnreadableSitting, type Journal, type SittingEvent } from './events.ts';
import {
  fastestAssessed,
  longestAssessedWaitS,
  phaseOf,
  sittingMachine,
  type Pace,
  type Phase,
  type SittingMode,
  type SittingMove,
} from './machine.ts';
import { sampleEveryS, sampleOf, sampleRun, type Sample } from './trace.ts';

/** What the hand wanted and could not do. */
export interface Refusal {
  readonly atS: number;
  readonly action: Action;
  readonly hindrance: Hindrance;
  /** Counts refusals, so that the same one twice is told twice. */
  readonly number: number;
}

/** All that a screen shows of a sitting. A new object after every change. */
export interface SittingView {
  readonly mode: SittingMode;
  readonly phase: Phase;
  readonly pace: Pace;
  readonly run: RunState;
  readonly readings: Readings;
  readonly entries: readonly RecordEntry[];
  readonly trace: readonly Sample[];
  /** Stretches given up by going back. */
  readonly abandoned: readonly (readonly Sample[])[];
  readonly refusal: Refusal | null;
  /** How often the coach was asked; going back does not make it unasked. */
  readonly asked: number;
  /** A second wrench holds back whatever is turned. */
  readonly holdsBack: boolean;
  /** Something asked for is still being written or done. */
  readonly busy: boolean;
  /** Why the last event could not be kept, or null. */
  readonly trouble: string | null;
}

export interface Sitting {
  view(): SittingView;
  /** Calls back after every change until the returned function is called. */
  subscribe(changed: () => void): () => void;
  begin(): void;
  /** The hand does it, or is hindered. Resolves when kept and done. */
  act(action: Action): Promise<void>;
  /** Lets time pass, s; stops early at an alarm, a blow, a thrown piece or the end. */
  wait(durationS: number): Promise<void>;
  /** Waits until the bleed and the vent are quiet to the ear, at most so long, s. */
  waitUntilQuiet(atMostS: number): Promise<void>;
  hold(): void;
  /** Lets the clock run at life's pace, or hurried. */
  go(pace: Pace): void;
  /** The wall clock moved on so many seconds: called by the screen, never by the core. */
  tick(realS: number): void;
  /** Goes back to an earlier moment, s, before anything done then or later, and holds the clock there. */
  rewind(toS: number): Promise<void>;
  /** Asks the coach for what is due: counted and written down. Nobody answers under assessment. */
  ask(): Promise<void>;
  /** Holds back with a second wrench from now on, or no longer. Shown at once, and kept. */
  holdBack(on: boolean): Promise<void>;
  /** Ends the sitting with the run as it stands. */
  handIn(): Promise<void>;
}

const startling: ReadonlySet<Fact['fact']> = new Set([
  'blow.began',
  'rod.thrown',
  'rod.sank',
  'saddle.lifted',
  'stopper.slipped',
  'gas.flammable',
  'gas.ignited',
  'ended',
]);

/** Ends a wait before its time: something a crew would look up at. */
function startles(fact: Fact): boolean {
  return fact.fact === 'gas.alarm' ? fact.step > 0 : startling.has(fact.fact);
}

/**
 * Opens a sitting of a scenario, performing again what is kept of it.
 * @throws UnreadableSitting when a kept action is one the rig refuses now
 */
export function openSitting(
  scenario: Scenario,
  kept: readonly SittingEvent[],
  journal: Journal,
  mode: SittingMode = 'practice',
): Sitting {
  const actor = createActor(sittingMachine).start();
  const changes = new Set<() => void>();
  let run = begin(scenario);
  let moments: RunState[] = [run];
  let entries: RecordEntry[] = [];
  let trace: Sample[] = [sampleRun(run)];
  let abandoned: (readonly Sample[])[] = [];
  let pace: Pace = 1;
  let refusal: Refusal | null = null;
  let asked = 0;
  let holdsBack = false;
  let handedIn = false;
  let trouble: string | null = null;
  let queue: Promise<void> = Promise.resolve();
  let waiting = 0;
  let shown: SittingView | null = null;

  const phase = (): Phase => phaseOf(actor.getSnapshot().value);
  const move = (type: SittingMove['type']): void => actor.send({ type });

  function changed(): void {
    shown = null;
    if ((run.rig.ending !== null || handedIn) && phase() !== 'debrief') move('end');
    for (const tell of changes) tell();
  }

  function sampleTo(next: RunState): void {
    run = next;
    trace = [...trace, sampleRun(run)];
  }

  /** Advances in chart steps until a time or until something stops it. */
  function pass(untilS: number, stops: (since: readonly Fact[]) => boolean): void {
    const steps: Sample[] = [];
    while (run.clockS < untilS && run.rig.ending === null) {
      const before = run.facts.length;
      run = advance(run, Math.min(untilS, run.clockS + sampleEveryS));
      steps.push(sampleOf(read(run)));
      if (stops(run.facts.slice(before))) break;
    }
    if (steps.length > 0) trace = [...trace, ...steps];
  }

  const never = (): boolean => false;
  const settleHands = (): void => pass(run.busyUntilS, never);

  function perform(action: Action): Hindrance | null {
    const tried = attempt(run, action);
    if ('hindrance' in tried) return tried.hindrance;
    entries = [...entries, { atS: run.clockS, action }];
    sampleTo(tried.run);
    moments = [...moments, run];
    settleHands();
    return null;
  }

  /** Drops whatever was done at that time or later, so that the hands stand before it. */
  function goBack(toS: number): void {
    const stay = entries.filter((entry) => entry.atS < toS).length;
    const moment = moments[stay];
    const thenS = Math.max(toS, moment.busyUntilS);
    if (stay === entries.length && thenS >= run.clockS) return;
    const cut = trace.findIndex((sample) => sample.atS > moment.clockS);
    if (cut > 0) {
      abandoned = [...abandoned, trace.slice(cut - 1)];
      trace = trace.slice(0, cut);
    }
    moments = moments.slice(0, stay + 1);
    entries = entries.slice(0, stay);
    run = moment;
    pass(thenS, never);
  }

  kept.forEach((event, index) => {
    if (event.kind === 'acted') {
      pass(event.atS, never);
      const hindrance = perform(event.action);
      if (hindrance !== null) throw new UnreadableSitting(index, hindrance);
    } else if (event.kind === 'asked') asked += 1;
    else if (event.kind === 'heldBack') holdsBack = event.on;
    else if (event.kind === 'handedIn') {
      pass(event.atS, never);
      handedIn = true;
    } else if (event.kind === 'waited') pass(event.untilS, never);
    else {
      handedIn = false;
      goBack(event.toS);
    }
  });
  if (kept.length > 0) {
    move('begin');
    move('hold');
    changed();
  }

  /** One change after the other; the clock stands while one is being written. */
  function enqueue(work: () => Promise<void>): Promise<void> {
    waiting += 1;
    changed();
    queue = queue.then(async () => {
      trouble = null;
      try {
        await work();
      } catch (reason) {
        trouble = reason instanceof Error ? reason.message : String(reason);
      } finally {
        waiting -= 1;
        changed();
      }
    });
    return queue;
  }

  async function waitWhile(atMostS: number, goesOn: () => boolean): Promise<void> {
    settleHands();
    const fromS = run.clockS;
    pass(run.clockS + atMostS, (since) => since.some(startles) || !goesOn());
    if (run.clockS > fromS) await journal.append({ kind: 'waited', untilS: run.clockS });
  }

  const allowedS = (durationS: number): number =>
    mode === 'assessment' ? Math.min(durationS, longestAssessedWaitS) : durationS;

  const noisy = (): boolean => {
    const heard = read(run);
    return heard.bleedHeard || heard.holeHeard;
  };

  return {
    view() {
      shown ??= {
        mode,
        phase: phase(),
        pace,
        run,
        readings: read(run),
        entries,
        trace,
        abandoned,
        refusal,
        asked,
        holdsBack,
        busy: waiting > 0,
        trouble,
      };
      return shown;
    },
    subscribe(callback) {
      changes.add(callback);
      return () => changes.delete(callback);
    },
    begin() {
      move('begin');
      changed();
    },
    act: (action) =>
      enqueue(async () => {
        settleHands();
        const hindrance = could(run, action);
        if (hindrance !== null) {
          refusal = { atS: run.clockS, action, hindrance, number: (refusal?.number ?? 0) + 1 };
          return;
        }
        await journal.append({ kind: 'acted', atS: run.clockS, action });
        const refused = perform(action);
        if (refused !== null) throw new Error(`The rig took back its word: ${refused}`);
        refusal = null;
        move('act');
        pace = 1;
      }),
    wait: (durationS) => enqueue(() => waitWhile(allowedS(durationS), () => true)),
    waitUntilQuiet: (atMostS) => enqueue(() => waitWhile(allowedS(atMostS), noisy)),
    hold() {
      move('hold');
      changed();
    },
    go(next) {
      pace = mode === 'assessment' && next > fastestAssessed ? fastestAssessed : next;
      move(pace === 1 ? 'go' : 'hurry');
      changed();
    },
    tick(realS) {
      const now = phase();
      if (waiting > 0 || (now !== 'running' && now !== 'hurried') || realS <= 0) return;
      const before = run.facts.length;
      pass(run.clockS + realS * pace, never);
      if (now === 'hurried' && run.facts.slice(before).some(startles)) {
        pace = 1;
        move('go');
      }
      changed();
    },
    rewind: (toS) =>
      enqueue(async () => {
        if (mode === 'assessment') return;
        move('rewind');
        await journal.append({ kind: 'rewound', toS });
        goBack(toS);
        handedIn = false;
        refusal = null;
        move('rewound');
      }),
    ask: () =>
      enqueue(async () => {
        if (mode === 'assessment') return;
        await journal.append({ kind: 'asked', atS: run.clockS });
        asked += 1;
      }),
    holdBack(on) {
      holdsBack = on;
      return enqueue(() => journal.append({ kind: 'heldBack', atS: run.clockS, on }));
    },
    handIn: () =>
      enqueue(async () => {
        settleHands();
        await journal.append({ kind: 'handedIn', atS: run.clockS });
        handedIn = true;
      }),
  };
}
