export * from './schema.ts';
export * from './parse.ts';
export type { Problem } from './problem.ts';
export { problemOf } from './problem.ts';
export { parseSet, setJsonSchema, type ExerciseSet } from './sets.ts';
export { scenarioJsonSchema } from './jsonSchema.ts';
export { scanJson } from './text/scanJson.ts';
