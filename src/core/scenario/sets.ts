import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { atMost } from '../units/index.ts';
import { problemOf, type Problem } from './problem.ts';
import { readText } from './text/readText.ts';

const id = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{2,60}$/));

/** A set of exercises done one after another, and what of them makes a pass. It trains and observes; it qualifies nobody. */
export const setSchema = v.strictObject({
  format: v.literal('stillmain-set'),
  version: v.literal(1),
  id,
  title: v.pipe(v.string(), v.minLength(1), atMost(120)),
  says: v.pipe(v.string(), v.minLength(1), atMost(2000)),
  /** In the order they stand, or as whoever sits it likes. */
  order: v.picklist(['asListed', 'any']),
  /** Names of the exercises. */
  exercises: v.pipe(v.array(id), v.minLength(1), v.maxLength(20)),
  pass: v.strictObject({
    /** So many of them passed. */
    atLeast: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(20)),
    /** A critical verdict in any of them fails the set. */
    noneCritical: v.boolean(),
    /** Least mean score over all of them, of 100. */
    meanScore: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(100)),
  }),
});
export type ExerciseSet = v.InferOutput<typeof setSchema>;

export type ParsedSet = { readonly set: ExerciseSet } | { readonly problems: readonly Problem[] };

/** Longest file of a set read, bytes. */
const SET_BYTES_MOST = 16384;

/** Reads a set of exercises. Whether the exercises exist is for whoever opens them to find out. */
export function parseSet(input: string | Uint8Array): ParsedSet {
  const text = readText(input, SET_BYTES_MOST);
  if ('problem' in text) return { problems: [text.problem] };
  const read = v.safeParse(setSchema, text.value);
  if (!read.success) return { problems: read.issues.map(problemOf) };
  const problems = crossed(read.output);
  return problems.length > 0 ? { problems } : { set: read.output };
}

function crossed({ exercises, pass }: ExerciseSet): Problem[] {
  const problems = exercises.flatMap((name, i) =>
    exercises.indexOf(name) < i ? [{ where: `exercises[${i}]`, says: `${name} is listed twice.` }] : [],
  );
  if (pass.atLeast <= exercises.length) return problems;
  const says = `The set has ${exercises.length} exercises; ${pass.atLeast} of them cannot be passed.`;
  return [...problems, { where: 'pass.atLeast', says }];
}

/** A set's JSON Schema (draft 2020-12). */
export function setJsonSchema(): object {
  return toJsonSchema(setSchema, { target: 'draft-2020-12', ignoreActions: ['finite'] });
}
