import { workOf, type HoldPointId, type Job } from '../rig/index.ts';

export const stages = [
  's1',
  's2',
  's3',
  's4',
  's5',
  's6',
  's7',
  's8',
  'r1',
  's9',
  's10',
  's11',
  'r2',
  'r3',
  'r4',
  'r5',
  'r6',
  's12',
  'done',
] as const;
export type StageId = (typeof stages)[number];

const ofRenewal: ReadonlySet<StageId> = new Set(['r1', 'r2', 'r3', 'r4', 'r5', 'r6']);

/** The stages of a job in their order: the coupling is either closed or given a new tee. */
export function stagesOf(job: Job): readonly StageId[] {
  const abandoned = workOf(job) === 'abandon';
  return stages.filter((stage) => (abandoned ? !ofRenewal.has(stage) : stage !== 's11'));
}

/** `open`: guarded work not begun and not signed; `signed`: the trainee's signature stands; `passed`: guarded work begun under a signature; `missed`: guarded work begun without one. */
export type HoldState = 'open' | 'signed' | 'passed' | 'missed';

/** What the run keeps of the procedure: values only, no machine objects. */
export interface ProcedureValue {
  readonly stage: StageId;
  readonly holds: Readonly<Record<HoldPointId, HoldState>>;
}

/** The stage in which a hold point is signed. */
export const stageOfHoldPoint: Readonly<Record<HoldPointId, StageId>> = {
  H1: 's1',
  H2: 's3',
  H3: 's5',
  H4: 's6',
  H5: 's6',
  H6: 's7',
  H7: 's8',
  H8: 's9',
  H9: 's9',
  H10: 's10',
  H11: 's11',
  R1: 'r1',
  R2: 'r2',
  R3: 'r3',
  R4: 'r4',
  R5: 'r5',
  R6: 'r6',
  H12: 's12',
};
