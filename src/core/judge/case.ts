import { jobAtStart } from '../faults/index.ts';
import type { Fact, HoldPointId, Job } from '../rig/index.ts';
import type { Heading, Scenario } from '../scenario/index.ts';
import { openings, standings, type Limits, type Opening, type Standing, tell } from '../procedure/index.ts';
import { givenBy, type Given, type RunState } from '../run/index.ts';
import { judgeHoldPoints, type HoldJudgement } from './holdPoints.ts';
import type { FindingId } from './catalogue.ts';

/** The parts of a replayed run that are judged. */
export type JudgedRun = Pick<
  RunState,
  'scenario' | 'rig' | 'struck' | 'facts' | 'ledger' | 'air' | 'clockS' | 'actions'
>;

/** One run laid out for the rules. */
export interface Case {
  readonly run: JudgedRun;
  readonly scenario: Scenario;
  /** As the crew found it: with every fault that was there from the start. */
  readonly job: Job;
  readonly limits: Limits;
  readonly facts: readonly Fact[];
  /** How the rig stood after each fact. */
  readonly stood: readonly Standing[];
  readonly openings: readonly Opening[];
  /** What had happened when the trainee took over: it is told to the rules and never scored. */
  readonly given: Given;
  readonly holds: readonly HoldJudgement[];
  /** Index of the fact with which a hold point's guarded work began, or the end. */
  readonly begun: (id: HoldPointId) => number;
}

/** What a rule hands over before anything is charged. */
export interface Draft {
  readonly id: FindingId;
  readonly atS: number;
  /** Of the heading's default weight. */
  readonly points: number;
  readonly critical?: boolean;
  readonly holdPoint?: HoldPointId | null;
  readonly numbers?: Readonly<Record<string, number>>;
  readonly items?: readonly string[];
  /** What it comes from: one cause is charged once. */
  readonly causes: readonly string[];
  /** Gas that got away is an effect: what the act behind it already cost is taken off. */
  readonly release?: 'act' | 'effect';
}

export type Rule = (judged: Case) => readonly Draft[];

/** Weights the points of the rules are thought in; another scenario scales them. */
export const defaultWeights: Readonly<Record<Heading, number>> = {
  holdPoints: 40,
  gasControl: 20,
  technique: 15,
  kit: 15,
  abnormal: 10,
};

/** Lays a replayed run out for the rules. */
export function layOutCase(run: JudgedRun): Case {
  const { scenario, facts } = run;
  const { limits } = scenario;
  const job = jobAtStart(scenario.job, scenario.faults);
  const holds = judgeHoldPoints(run);
  return {
    run,
    scenario,
    job,
    limits,
    facts,
    stood: standings(facts, job),
    openings: openings(tell(facts, limits, job)),
    holds,
    given: givenBy(scenario),
    begun: (id) => holds.find((hold) => hold.id === id)?.begunAt ?? facts.length,
  };
}
