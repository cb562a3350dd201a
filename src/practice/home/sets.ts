import { judgeSet, type SetAssessment } from '../../core/judge/index.ts';
import type { ExerciseSet } from '../../core/scenario/index.ts';
import { spoken } from '../../text/index.ts';
import type { KeptRun } from '../../store/index.ts';

/** How an exercise of a set stands: what its assessment came to, under way, to be done now, or only after others. */
export type StepState = 'pass' | 'fail' | 'critical' | 'working' | 'due' | 'later';

export interface SetStep {
  readonly id: string;
  readonly state: StepState;
  readonly score: number | null;
}

export interface SetProgress {
  readonly steps: readonly SetStep[];
  /** By the set's own rule, with what is not done counted as nothing. */
  readonly judged: SetAssessment;
}

const documents = import.meta.glob<ExerciseSet>('../../../scenarios/sets/*.json', {
  import: 'default',
  eager: true,
});
const inOtherLanguages = import.meta.glob<string>('../../../scenarios/sets/*.txt', {
  query: '?raw',
  import: 'default',
});

/** The sets that come with the product. */
export const shippedSets: readonly ExerciseSet[] = Object.values(documents);

/** A set's title and what it says of itself, in the language of the moment. */
export async function setWords({ id, title, says }: ExerciseSet): Promise<{ title: string; says: string }> {
  const fetchText = inOtherLanguages[`../../../scenarios/sets/${id}.${spoken()}.txt`];
  if (fetchText === undefined) return { title, says };
  const [first, ...rest] = (await fetchText()).trim().split('\n');
  return { title: first, says: rest.join(' ').trim() };
}

/**
 * How far a person has come in a set, by the runs of this browser: only assessments count, and of each exercise the
 * newest. Nobody without a name has come anywhere.
 */
export function progressOf(set: ExerciseSet, runs: readonly KeptRun[], person: string): SetProgress {
  const own = runs
    .filter((run) => run.mode === 'assessment' && run.person !== undefined && run.person === person.trim())
    .sort((a, b) => (a.begunAt < b.begunAt ? 1 : -1));
  const made = new Map<string, { verdict: 'pass' | 'fail' | 'critical'; score: number }>();
  const steps: SetStep[] = [];
  for (const id of set.exercises) {
    const run = own.find(({ scenario }) => scenario.id === id);
    const verdict = verdictOf(run);
    const score = run?.score ?? null;
    if (verdict !== null && score !== null) made.set(id, { verdict, score });
    const open = set.order === 'any' || steps.every(({ state }) => ended.has(state));
    steps.push({ id, score, state: verdict ?? (run === undefined ? (open ? 'due' : 'later') : 'working') });
  }
  return { steps, judged: judgeSet(set, made) };
}

const verdicts = ['pass', 'fail', 'critical'] as const;
const ended: ReadonlySet<StepState> = new Set(verdicts);

const verdictOf = (run: KeptRun | undefined) =>
  run?.state === 'finished' ? (verdicts.find((one) => one === run.verdict) ?? null) : null;
