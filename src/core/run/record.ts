import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { atMost } from '../units/index.ts';
import {
  entrySchema,
  parseScenario,
  problemOf,
  scenarioSchema,
  type Problem,
  type Scenario,
} from '../scenario/index.ts';
import { preludeProblem } from './prelude.ts';
import { chainOf, firstBreak, type ChainBreak } from './chain.ts';
import { canonicalText, digestOf } from './digest.ts';
import type { RecordEntry, RunRecord, RunState, SaidOfRun } from './types.ts';

/** The maker of a run: its laws and its numbers. A run of another engine is shown, never judged again. */
export const ENGINE = 'stillmain 0.3.0';

/** Largest run file read, bytes, and deepest nesting. A long job is a tenth of the size and a third of the depth. */
export const RECORD_BYTES_MOST = 8388608;
export const RECORD_DEPTH_MOST = 24;

const hex = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/));
const clock = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(864000));

const line = v.pipe(v.string(), v.minLength(1), atMost(120));

/** Who performed a run, by their own word, and when: wall clock, ISO 8601 in UTC. */
const performerSchema = v.strictObject({
  person: line,
  /** Counted from 1 for this person and exercise. */
  attempt: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999)),
  begunAt: v.nullable(v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{3})?Z$/))),
});

/** How the run was sat, as the one who made the file says. */
const sittingSchema = v.strictObject({
  mode: v.picklist(['practice', 'assessment']),
  asked: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(9999)),
});

/** What the maker of the file said of the run. Shown where it cannot be judged again; never believed. */
const saidSchema = v.strictObject({
  verdict: v.picklist(['pass', 'fail', 'critical']),
  ending: v.picklist(['complete', 'referred', 'isolated', 'hurt', 'none']),
  score: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(100)),
});

/**
 * A run as a file, entry by entry. What only the whole can show (chain, order, canonical form) `parseRecord` checks.
 * Version 2 binds the whole of the record in its chain and may name who performed it; version 1 is read as it is.
 */
export const recordSchema = v.strictObject({
  format: v.literal('stillmain-run'),
  version: v.picklist([1, 2]),
  engine: v.pipe(v.string(), v.minLength(1), atMost(80)),
  scenario: scenarioSchema,
  by: v.optional(performerSchema),
  sitting: v.optional(sittingSchema),
  said: v.optional(saidSchema),
  entries: v.pipe(v.array(entrySchema), v.maxLength(50000)),
  chain: v.pipe(v.array(hex), v.maxLength(50002)),
  endDigest: hex,
  endS: clock,
});

/** The same with its exercise still unread: an older one is brought up to date by its own reader. */
const envelopeSchema = v.strictObject({ ...recordSchema.entries, scenario: v.unknown() });

/** A run file's JSON Schema (draft 2020-12). */
export function recordJsonSchema(): object {
  return toJsonSchema(recordSchema, { target: 'draft-2020-12', ignoreActions: ['finite'] });
}

/** `altered`: the hash chain breaks at a place, so something was changed after sealing. */
export type ParsedRecord =
  | { readonly state: 'sound'; readonly record: RunRecord }
  | ({ readonly state: 'altered'; readonly record: RunRecord } & ChainBreak)
  | { readonly state: 'unusable'; readonly problem: Problem };

/** Closes a run into a record that can be written, sent and judged again. */
export function sealRecord(
  scenario: Scenario,
  entries: readonly RecordEntry[],
  finalRun: RunState,
  told: SaidOfRun = {},
): RunRecord {
  const unsealed = {
    format: 'stillmain-run',
    version: 2,
    engine: ENGINE,
    scenario,
    ...told,
    entries,
    endDigest: digestOf(finalRun),
    endS: finalRun.clockS,
  } as const;
  return { ...unsealed, chain: chainOf(unsealed) };
}

/** The record's one exact text. Its UTF-8 bytes are the file. */
export function recordText(record: RunRecord): string {
  return canonicalText(record);
}

/** Reads a run file. Refuses what is too large or deep, not JSON, not of the format, or not its own canonical text. */
export function parseRecord(input: string | Uint8Array): ParsedRecord {
  const read = readCanonical(input);
  if ('problem' in read) return { state: 'unusable', problem: read.problem };
  const shape = v.safeParse(envelopeSchema, read.value);
  if (!shape.success) return { state: 'unusable', problem: problemOf(shape.issues[0]) };
  const parsed = parseScenario(shape.output.scenario);
  if ('problems' in parsed) {
    const { where, says } = parsed.problems[0];
    return { state: 'unusable', problem: { where: where === '' ? 'scenario' : `scenario.${where}`, says } };
  }
  const record: RunRecord = { ...shape.output, scenario: parsed.scenario };
  const early = record.entries.findIndex((entry, i) => i > 0 && entry.atS < record.entries[i - 1].atS);
  if (early >= 0) return unusable('The action is earlier than the one before it.', `entries[${early}].atS`);
  // The chain hangs on the exercise as it was written when the run was made.
  const broken = firstBreak(shape.output);
  if (broken !== null) return { state: 'altered', record, ...broken };
  const refused = record.engine === ENGINE ? preludeProblem(record.scenario) : null;
  if (refused !== null) return unusable(refused.says, `scenario.${refused.where}`);
  return { state: 'sound', record };
}

/**
 * How far a record may be believed: `altered` if its chain breaks, `differs` if playing it again ends in another
 * state (or another engine made it), `same` if everything agrees to the last bit.
 */
export function integrity(record: RunRecord, replayed: RunState): 'same' | 'differs' | 'altered' {
  if (record.engine !== ENGINE) return 'differs';
  if (firstBreak(record) !== null) return 'altered';
  if (record.endS !== replayed.clockS) return 'differs';
  return digestOf(replayed) === record.endDigest ? 'same' : 'differs';
}

function unusable(says: string, where = ''): ParsedRecord {
  return { state: 'unusable', problem: { where, says } };
}

function readCanonical(input: string | Uint8Array): { text: string; value: unknown } | { problem: Problem } {
  const refuse = (says: string) => ({ problem: { where: '', says } });
  if (input.length > RECORD_BYTES_MOST) return refuse(`The file is larger than ${RECORD_BYTES_MOST} bytes.`);
  let text: string;
  try {
    text =
      typeof input === 'string'
        ? input
        : new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(input);
  } catch {
    return refuse('The file is not UTF-8 text.');
  }
  if (depthOf(text) > RECORD_DEPTH_MOST)
    return refuse(`The file is nested deeper than ${RECORD_DEPTH_MOST} levels.`);
  try {
    const value = JSON.parse(text) as unknown;
    if (canonicalText(value) !== text) return refuse('The file is not its own canonical form.');
    return { text, value };
  } catch {
    return refuse('The file is not JSON.');
  }
}

/** Deepest nesting of brackets outside strings. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    if (quoted) {
      if (c === 92) i += 1;
      else if (c === 34) quoted = false;
    } else if (c === 34) quoted = true;
    else if (c === 123 || c === 91) {
      depth += 1;
      if (depth > deepest) deepest = depth;
    } else if (c === 125 || c === 93) depth -= 1;
  }
  return deepest;
}
