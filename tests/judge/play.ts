import { readFileSync } from 'node:fs';
import { drive, hasty, steady, type Driven } from '../../src/core/hands/index.ts';
import { assess, type RunAssessment } from '../../src/core/judge/index.ts';
import { advance, attempt, begin, type RecordEntry, type RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import type { Action } from '../../src/core/rig/index.ts';

/** The exercise every test of the judge starts from, changed as asked. */
export function exercise(change: (scenario: Mutable) => void = () => undefined): Scenario {
  const path = new URL('../../scenarios/abandon-1in-tee-on-4in-main/scenario.json', import.meta.url);
  const scenario = JSON.parse(readFileSync(path, 'utf8')) as Mutable;
  change(scenario);
  return scenario;
}
type DeepMutable<T> = { -readonly [K in keyof T]: T[K] extends object ? DeepMutable<T[K]> : T[K] };
export type Mutable = DeepMutable<Scenario>;

let model: Driven | null = null;
/** The steady hand's run of the plain exercise, driven once. */
export function steadyRun(): Driven {
  model ??= drive(exercise(), steady);
  return model;
}

let careless: Driven | null = null;
export function hastyRun(): Driven {
  careless ??= drive(exercise(), hasty);
  return careless;
}

export interface Played {
  readonly run: RunState;
  readonly entries: readonly RecordEntry[];
  /** Entries the hand could no longer do. */
  readonly dropped: readonly Action[];
  readonly assessment: RunAssessment;
}

/** One entry of an open-loop play: its action, and how much later than in the model it comes, s. */
export interface Step {
  readonly action: Action;
  readonly gapS: number;
}

/** The model's entries as actions with the time since the one before. */
export function stepsOf(entries: readonly RecordEntry[]): readonly Step[] {
  return entries.map((entry, i) => ({ action: entry.action, gapS: entry.atS - (entries[i - 1]?.atS ?? 0) }));
}

/**
 * Plays actions open loop: each so long after the one before as in the model, or when the hands are free; what is
 * refused is dropped.
 */
export function play(scenario: Scenario, steps: readonly Step[]): Played {
  let run = begin(scenario);
  const entries: RecordEntry[] = [];
  const dropped: Action[] = [];
  let dueS = 0;
  for (const step of steps) {
    dueS += step.gapS;
    run = advance(run, Math.max(dueS, run.busyUntilS));
    dueS = run.clockS;
    const attempted = attempt(run, step.action);
    if ('hindrance' in attempted) {
      dropped.push(step.action);
      continue;
    }
    entries.push({ atS: run.clockS, action: step.action });
    run = attempted.run;
  }
  if (run.rig.ending === null) run = advance(run, run.busyUntilS);
  return { run, entries, dropped, assessment: assess(run) };
}

/** Plays the model with one change to its steps. */
export function deviate(change: (steps: readonly Step[]) => readonly Step[], scenario = exercise()): Played {
  return play(scenario, change(stepsOf(steadyRun().entries)));
}

export type Matches = (action: Action, index: number) => boolean;

/** Leaves out every step that matches; its time goes by all the same. */
export function without(matches: Matches): (steps: readonly Step[]) => readonly Step[] {
  return (steps) => {
    let owedS = 0;
    return steps.flatMap((step, i) => {
      if (matches(step.action, i)) {
        owedS += step.gapS;
        return [];
      }
      const kept = { ...step, gapS: step.gapS + owedS };
      owedS = 0;
      return [kept];
    });
  };
}

/** Changes every step that matches. */
export function changing(
  matches: Matches,
  change: (action: Action) => Action,
): (steps: readonly Step[]) => readonly Step[] {
  return (steps) =>
    steps.map((step, i) => (matches(step.action, i) ? { ...step, action: change(step.action) } : step));
}

/** Puts actions in straight before the first step that matches. */
export function before(
  matches: Matches,
  ...actions: readonly Action[]
): (steps: readonly Step[]) => readonly Step[] {
  return (steps) => {
    const at = steps.findIndex((step, i) => matches(step.action, i));
    const added = actions.map((action) => ({ action, gapS: 0 }));
    return at < 0 ? steps : [...steps.slice(0, at), ...added, ...steps.slice(at)];
  };
}

/** Index of the first step that matches, for cutting a model short. */
export function indexOf(matches: Matches): number {
  return steadyRun().entries.findIndex((entry, i) => matches(entry.action, i));
}

/** Ids of everything found, in order. */
export function found(assessment: RunAssessment): readonly string[] {
  return assessment.findings.map((finding) => finding.id);
}

/** Outcome of one hold point. */
export function outcomeOf(assessment: RunAssessment, id: string): string | undefined {
  return assessment.holdPoints.find((hold) => hold.id === id)?.outcome;
}

/** Signing this hold point. */
export function signs(id: string): Matches {
  return (action) => action.kind === 'sign' && action.holdPoint === id;
}
