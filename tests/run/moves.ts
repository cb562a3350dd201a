import fc from 'fast-check';
import { drive, steady } from '../../src/core/hands/index.ts';
import type { Action, Hindrance } from '../../src/core/rig/index.ts';
import { advance, attempt, replay, type RecordEntry, type RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { Chance, drawAction } from '../../src/cli/bench/randomActions.ts';

/** The whole job by a steady hand, and the run right after each of its acts: places from which to go astray. */
export interface SoundJob {
  readonly scenario: Scenario;
  readonly entries: readonly RecordEntry[];
  readonly moments: readonly RunState[];
}

export function soundJob(scenario: Scenario): SoundJob {
  const { entries } = drive(scenario, steady);
  const moments: RunState[] = [];
  replay(scenario, entries, (run) => moments.push(run));
  return { scenario, entries, moments };
}

/** What a crew might do next: go on with the job (leaving some of it out), do some other part of it, anything, or wait. */
export type Move =
  | { readonly go: 'on'; readonly skip: number }
  | { readonly go: 'elsewhere'; readonly at: number }
  | { readonly go: 'mad'; readonly seed: number }
  | { readonly go: 'wait'; readonly waitS: number };

/** Where in the job it begins, and what is done from there. */
export interface Astray {
  readonly from: number;
  readonly moves: readonly Move[];
}

const anyMove: fc.Arbitrary<Move> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ go: fc.constant('on' as const), skip: fc.nat(2) }) },
  { weight: 3, arbitrary: fc.record({ go: fc.constant('elsewhere' as const), at: fc.nat(10_000) }) },
  { weight: 5, arbitrary: fc.record({ go: fc.constant('mad' as const), seed: fc.nat() }) },
  {
    weight: 1,
    arbitrary: fc.record({
      go: fc.constant('wait' as const),
      waitS: fc.double({ min: 0, max: 90, noNaN: true }),
    }),
  },
);

/** So many moves from anywhere in the job. */
export const anyAstray = (moves: number): fc.Arbitrary<Astray> =>
  fc.record({
    from: fc.nat(10_000),
    moves: fc.array(anyMove, { minLength: moves, maxLength: moves, size: 'max' }),
  });

/** What came of one move: the act tried, and what hindered it, if anything. A wait tries nothing. */
export interface Step {
  readonly action: Action | null;
  readonly hindrance: Hindrance | null;
  readonly before: RunState;
  readonly after: RunState;
}

/** Plays it; `visit` sees every move. Returns the run as it stands and the entries of a record that holds it. */
export function goAstray(
  job: SoundJob,
  astray: Astray,
  visit?: (step: Step) => void,
): { run: RunState; entries: RecordEntry[] } {
  const start = astray.from % job.moments.length;
  const entries = job.entries.slice(0, start + 1);
  let run = advance(job.moments[start], job.moments[start].busyUntilS);
  let next = start + 1;
  const kit = job.scenario.job.kit.map((piece) => piece.id);
  for (const move of astray.moves) {
    if (run.rig.ending !== null) break;
    const before = run;
    if (move.go === 'on') next = (next + move.skip) % job.entries.length;
    const action = actionOf(job, move, next, kit);
    let hindrance: Hindrance | null = null;
    if (action === null) run = advance(run, run.clockS + (move.go === 'wait' ? move.waitS : 0));
    else {
      const attempted = attempt(run, action);
      if ('hindrance' in attempted) ({ hindrance } = attempted);
      else {
        entries.push({ atS: run.clockS, action });
        run = advance(attempted.run, attempted.run.busyUntilS);
      }
    }
    if (move.go === 'on') next = (next + 1) % job.entries.length;
    visit?.({ action, hindrance, before, after: run });
  }
  return { run, entries };
}

function actionOf(job: SoundJob, move: Move, next: number, kit: readonly string[]): Action | null {
  switch (move.go) {
    case 'on':
      return job.entries[next].action;
    case 'elsewhere':
      return job.entries[move.at % job.entries.length].action;
    case 'mad':
      return drawAction(new Chance(move.seed), kit);
    case 'wait':
      return null;
  }
}
