import * as v from 'valibot';
import { faultPlantedSchema } from '../faults/index.ts';
import { actionSchema, jobSchema } from '../rig/index.ts';
import { atMost } from '../units/index.ts';
import { holdPointSchema, limitsSchema, stages } from '../procedure/index.ts';

/** Form of the document written today. Older ones are brought up to it as they are read. */
export const SCENARIO_VERSION = 2;

const text = (most: number) => v.pipe(v.string(), v.minLength(1), atMost(most));
const points = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(100));

export const headings = ['holdPoints', 'gasControl', 'technique', 'kit', 'abnormal'] as const;
export type Heading = (typeof headings)[number];

/** What the exercise is about; the start page groups by it. */
export const exerciseFamilies = ['sound', 'renewal', 'fault', 'manyFaults', 'stop', 'drill'] as const;

/** One action of a run at its time. Actions done before the trainee takes over are written the same way. */
export const entrySchema = v.strictObject({
  atS: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(864000)),
  action: actionSchema,
});

/** The exercise document. One source: types, validation and the published JSON Schema come from here. */
export const scenarioSchema = v.strictObject({
  format: v.literal('stillmain-scenario'),
  version: v.literal(SCENARIO_VERSION),
  id: v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{2,60}$/)),
  title: text(120),
  kind: v.picklist(['job', 'drill']),
  family: v.picklist(exerciseFamilies),
  /** What becomes of the service: left for good, laid anew, or cut off and joined again. */
  work: v.picklist(['abandon', 'renew', 'reconnect']),
  /** Seed of everything that varies without being decided: gauge noise, reading error of a hand. */
  seed: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(4294967295)),
  brief: text(2000),
  workOrder: v.strictObject({
    number: text(40),
    operator: text(80),
    address: text(120),
    says: v.pipe(v.array(text(300)), v.maxLength(20)),
  }),
  job: jobSchema,
  faults: v.pipe(v.array(faultPlantedSchema), v.maxLength(20)),
  /** Actions already done when the trainee takes over, in order of time; a drill begins mid-job. */
  prelude: v.pipe(v.array(entrySchema), v.maxLength(2000)),
  /** Of a drill, the stage it begins with and the last that belongs to it. */
  drill: v.optional(v.strictObject({ from: v.picklist(stages), to: v.picklist(stages) })),
  holdPoints: v.pipe(v.array(holdPointSchema), v.minLength(1), v.maxLength(18)),
  limits: limitsSchema,
  weights: v.strictObject({
    holdPoints: points,
    gasControl: points,
    technique: points,
    kit: points,
    abnormal: points,
  }),
  /** Least score of a pass, of 100. */
  cutScore: points,
  /** Where the coach may be asked in what counts: points each hint costs under technique. Absent, hints cost nothing. */
  coach: v.optional(v.strictObject({ hintPoints: points })),
  intendedEnding: v.picklist(['complete', 'referred', 'isolated']),
  /** Longest a run may last, simulated s; null where speed does not count. */
  timeLimitS: v.nullable(v.pipe(v.number(), v.minValue(60), v.maxValue(86400))),
});
export type Scenario = v.InferOutput<typeof scenarioSchema>;
