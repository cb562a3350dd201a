import { drive, type Hand } from '../hands/index.ts';
import { assess, type RunAssessment } from '../judge/index.ts';
import type { RunState } from '../run/index.ts';
import type { Scenario } from '../scenario/index.ts';
import type { HandResult } from './types.ts';

/** One hand's run of an exercise with its judgement. */
export interface Tried {
  readonly run: RunState;
  readonly assessment: RunAssessment;
}

export function tryHand(scenario: Scenario, hand: Hand): Tried {
  const { run } = drive(scenario, hand);
  return { run, assessment: assess(run) };
}

export function resultOf({ run, assessment }: Tried): HandResult {
  const { verdict, ending, score, simulatedS } = assessment;
  const ended = run.rig.ending;
  return { verdict, ending, score, simulatedS, reason: ended?.kind === 'referred' ? ended.reason : null };
}
