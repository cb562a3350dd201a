import { assess, type Assessment, type Finding } from '../judge/index.ts';
import { canonicalText, ENGINE } from '../run/index.ts';
import { headings, type Heading, type Scenario } from '../scenario/index.ts';
import { keyOf } from './opinion.ts';
import { reassessRun, type Reassessed } from './reassess.ts';

/** Parts of an exercise that only the judge reads: another value here judges the same run otherwise. */
const judgedBy = ['holdPoints', 'limits', 'weights', 'cutScore', 'intendedEnding', 'timeLimitS'] as const;
/** Parts that nobody judges or plays by. */
const onlyTold = ['id', 'title', 'brief', 'workOrder'] as const;

/** What is judged otherwise. */
export interface JudgingChange {
  readonly weights?: Partial<Scenario['weights']>;
  readonly cutScore?: number;
  /** An exercise whose hold points, limits, weights, cut score and intended ending are taken. */
  readonly scenario?: Scenario;
}

/** How one run's judgement changes, and through what. */
export interface JudgementChange {
  readonly verdict: readonly [before: Assessment['verdict'], after: Assessment['verdict']];
  readonly score: readonly [before: number, after: number];
  readonly headings: readonly {
    readonly id: Heading;
    readonly got: readonly [number, number];
    readonly of: readonly [number, number];
  }[];
  /** Findings that are no longer made, that are new, and that cost otherwise. */
  readonly gone: readonly Finding[];
  readonly came: readonly Finding[];
  readonly costs: readonly { readonly finding: Finding; readonly points: readonly [number, number] }[];
  /** Whether the verdict alone turned on the least score to pass. */
  readonly byCutScore: boolean;
}

/** Not believed; the changed exercise is other work than what was done; or the headings no longer sum to 100. */
export type RefusedBecause = 'notBelieved' | 'otherWork' | 'weights';

export type Rejudged =
  | {
      readonly reassessed: Reassessed;
      readonly after: Assessment;
      /** Null where nothing changes. */
      readonly change: JudgementChange | null;
    }
  | {
      readonly reassessed: Reassessed;
      readonly refused: RefusedBecause;
    };

/** The exercise as it would be judged after a change, or why it cannot be. Pure. */
export function changedScenario(
  scenario: Scenario,
  change: JudgingChange,
): Scenario | Exclude<RefusedBecause, 'notBelieved'> {
  let next = scenario;
  if (change.scenario) {
    if (workOf(change.scenario) !== workOf(scenario)) return 'otherWork';
    const taken = judgedBy.map((name) => [name, change.scenario?.[name]] as const);
    next = { ...next, ...Object.fromEntries(taken) };
  }
  if (change.weights) next = { ...next, weights: { ...next.weights, ...change.weights } };
  const sum = headings.reduce((total, id) => total + next.weights[id], 0);
  if (Math.abs(sum - 100) > 1e-9) return 'weights';
  return change.cutScore === undefined ? next : { ...next, cutScore: change.cutScore };
}

function workOf(scenario: Scenario): string {
  const aside: readonly string[] = [...judgedBy, ...onlyTold];
  return canonicalText(
    Object.fromEntries(Object.entries(scenario).filter(([name]) => !aside.includes(name))),
  );
}

/**
 * Judges one run as it stands and as it would be judged after a change. The run is played once: what is changed is read
 * by the judge alone.
 */
export function rejudge(bytes: Uint8Array | string, change: JudgingChange): Rejudged {
  const { end, ...reassessed } = reassessRun(bytes);
  const before = reassessed.assessment;
  if (reassessed.integrity !== 'same' || end === null || before === null)
    return { reassessed, refused: 'notBelieved' };
  const scenario = changedScenario(end.scenario, change);
  if (typeof scenario === 'string') return { reassessed, refused: scenario };
  const asked = reassessed.record?.sitting?.asked ?? 0;
  const after = { ...assess({ ...end, scenario }, asked), digest: before.digest, engine: ENGINE };
  return { reassessed, after, change: compareJudgements(before, after) };
}

/** What differs between two judgements of one run; null where nothing does. Pure. */
export function compareJudgements(before: Assessment, after: Assessment): JudgementChange | null {
  const was = new Map(before.findings.map((finding) => [keyOf(finding), finding]));
  const is = new Map(after.findings.map((finding) => [keyOf(finding), finding]));
  const gone = before.findings.filter((finding) => !is.has(keyOf(finding)));
  const came = after.findings.filter((finding) => !was.has(keyOf(finding)));
  const costs = after.findings.flatMap((finding) => {
    const old = was.get(keyOf(finding));
    if (old === undefined || (old.points === finding.points && old.critical === finding.critical)) return [];
    return [{ finding, points: [old.points, finding.points] as const }];
  });
  const changedHeadings = headings.flatMap((id) => {
    const [a, b] = [before.headings[id], after.headings[id]];
    if (a.got === b.got && a.of === b.of) return [];
    return [{ id, got: [a.got, b.got] as const, of: [a.of, b.of] as const }];
  });
  const turned = before.verdict !== after.verdict;
  const found = gone.length + came.length + costs.length + changedHeadings.length > 0;
  if (!turned && !found && before.score === after.score) return null;
  return {
    verdict: [before.verdict, after.verdict],
    score: [before.score, after.score],
    headings: changedHeadings,
    gone,
    came,
    costs,
    byCutScore: turned && before.score === after.score && gone.length + came.length === 0,
  };
}
