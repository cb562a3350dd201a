import { drive, hasty, steady } from '../../src/core/hands/index.ts';
import {
  reassess,
  rowOf,
  draftDecision,
  type DecisionBody,
  type RunRow,
} from '../../src/core/review/index.ts';
import { recordText, sealRecord } from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';

/** The run files of two hands on the first exercise, made once. */
const by = (person: string) => ({ person, attempt: 1, begunAt: '2026-11-02T08:00:00Z' });
const fileOf = (hand: typeof steady, person: string): string => {
  const { entries, run } = drive(exercise(), hand);
  return recordText(sealRecord(exercise(), entries, run, { by: by(person) }));
};
export const steadyFile = fileOf(steady, 'Trainee 001');
export const hastyFile = fileOf(hasty, 'Trainee 002');
export const steadyRun = reassess(steadyFile);
export const hastyRun = reassess(hastyFile);

/** A line of the table that says only what is given. */
export const rowWith = (changes: Partial<RunRow>): RunRow => ({
  ...rowOf('run.json', steadyRun),
  ...changes,
});

/** A decision on the steady crew's run. */
export const decided = (changes: Partial<DecisionBody> = {}): DecisionBody => ({
  ...draftDecision({
    reassessed: steadyRun,
    assessor: { name: 'Assessor A', role: 'yard assessor' },
    decision: 'demonstrated',
    individual: 'Trainee 001',
    coveredTask: 'Abandon a service tee under pressure',
    decidedAt: '2026-11-25T12:00:00Z',
    validity: { from: '2026-11-25', until: '2027-11-25' },
  }),
  ...changes,
});
