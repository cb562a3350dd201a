import * as v from 'valibot';
import { jobSchema } from '../rig/index.ts';
import { holdPointSchema, limitsSchema } from '../procedure/index.ts';

const text = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));
const points = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(100));

export const headings = ['holdPoints', 'gasControl', 'technique', 'kit', 'abnormal'] as const;
export type Heading = (typeof headings)[number];

/** The exercise document. One source: types, validation and the published JSON Schema come from here. */
export const scenarioSchema = v.strictObject({
  format: v.literal('stillmain-scenario'),
  version: v.literal(1),
  id: v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{2,60}$/)),
  title: text(120),
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
  intendedEnding: v.picklist(['complete', 'referred', 'isolated']),
  /** Longest a run may last, simulated s; null where speed does not count. */
  timeLimitS: v.nullable(v.pipe(v.number(), v.minValue(60), v.maxValue(86400))),
});
export type Scenario = v.InferOutput<typeof scenarioSchema>;
