import * as v from 'valibot';
import { toJsonSchema } from '@valibot/to-json-schema';
import { canonicalText, digestOfText } from '../run/index.ts';
import { headings, problemOf, type Problem } from '../scenario/index.ts';
import { holdPointIds } from '../rig/index.ts';

const line = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));
const hex = (digits: number) => v.pipe(v.string(), v.regex(new RegExp(`^[0-9a-f]{${digits}}$`)));
const day = v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\d$/));
const moment = v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{3})?Z$/));
const timeS = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(864000));
const points = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(100));
const verdict = v.picklist(['pass', 'fail', 'critical']);

/** What an assessor can decide of a run: shown, not shown yet, or the run is not accepted as evidence at all. */
export const decisionWords = ['demonstrated', 'notYet', 'notAccepted'] as const;
export type DecisionWord = (typeof decisionWords)[number];

const body = {
  format: v.literal('stillmain-decision'),
  version: v.literal(1),
  /** Which run: by the digest of its file. */
  run: v.strictObject({
    digest: hex(64),
    scenarioId: v.nullable(line(80)),
    title: v.nullable(line(120)),
    engine: v.nullable(line(80)),
    attempt: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
    performedAt: v.nullable(moment),
  }),
  /** What the machine judged, beside the assessor's judgement and never overwritten by it. */
  machine: v.strictObject({
    integrity: v.picklist(['same', 'differs', 'altered', 'damaged']),
    verdict: v.nullable(verdict),
    score: v.nullable(points),
    critical: v.pipe(v.array(line(80)), v.maxLength(200)),
  }),
  assessor: v.strictObject({ name: line(120), role: line(120) }),
  decision: v.picklist(decisionWords),
  /** The four entries of 49 CFR 192.807(a): who, which covered task, when, by what method. */
  qualification: v.strictObject({
    individual: line(120),
    coveredTask: line(200),
    on: day,
    method: v.literal('simulation'),
  }),
  /** Days from and to which the operator lets the decision count; null where it counts for nothing. */
  validity: v.nullable(v.strictObject({ from: day, until: day })),
  /** Abnormal operating conditions of the run: whether they were seen, and answered rightly. */
  abnormal: v.pipe(
    v.array(
      v.strictObject({
        condition: line(80),
        seen: v.boolean(),
        reacted: v.boolean(),
        says: v.pipe(v.string(), v.maxLength(500)),
      }),
    ),
    v.maxLength(100),
  ),
  opinion: v.strictObject({
    setAside: v.pipe(v.array(v.strictObject({ finding: line(500), reason: line(1000) })), v.maxLength(200)),
    added: v.pipe(
      v.array(
        v.strictObject({
          heading: v.picklist(headings),
          atS: timeS,
          points,
          critical: v.boolean(),
          holdPoint: v.nullable(v.picklist(holdPointIds)),
          says: line(500),
          reason: line(1000),
        }),
      ),
      v.maxLength(200),
    ),
  }),
  /** The judgement with that opinion; null where the run could not be judged. */
  weighed: v.nullable(v.strictObject({ verdict, score: points })),
  /** Notes pinned to moments of the run, simulated s. */
  notes: v.pipe(v.array(v.strictObject({ atS: timeS, says: line(2000) })), v.maxLength(500)),
  decidedAt: moment,
  /** Not to be deleted before this day. */
  keepUntil: day,
  /** Digest of the decision that this one takes the place of, and why; both null in a first decision. */
  replaces: v.nullable(hex(64)),
  replacesWhy: v.nullable(line(1000)),
} as const;

export const signatureSchema = v.strictObject({
  algorithm: v.literal('Ed25519'),
  /** Public key of the installation, 32 bytes. */
  publicKey: hex(64),
  /** Over the UTF-8 bytes of the decision's canonical text without this entry, 64 bytes. */
  value: hex(128),
});
export type Signature = v.InferOutput<typeof signatureSchema>;

export const decisionSchema = v.strictObject({ ...body, signature: signatureSchema });
/** A counter-signed decision: a file, canonical JSON. Never changed; a later one refers to it. */
export type Decision = v.InferOutput<typeof decisionSchema>;
/** What is decided, before it is counter-signed. */
export type DecisionBody = Omit<Decision, 'signature'>;

/** A decision's JSON Schema (draft 2020-12). */
export function decisionJsonSchema(): object {
  return toJsonSchema(decisionSchema, { target: 'draft-2020-12', ignoreActions: ['finite'] });
}

export type ParsedDecision = { readonly decision: Decision } | { readonly problem: Problem };

/** Reads a decision file. Refuses what is not of the format, not its own canonical text, or contradicts itself. */
export function parseDecision(text: string): ParsedDecision {
  const refuse = (says: string, where = ''): ParsedDecision => ({ problem: { where, says } });
  if (text.length > 1048576) return refuse('The file is larger than a decision can be.');
  let value: unknown;
  try {
    value = JSON.parse(text) as unknown;
  } catch {
    return refuse('The file is not JSON.');
  }
  const shape = v.safeParse(decisionSchema, value);
  if (!shape.success) return { problem: problemOf(shape.issues[0]) };
  if (canonicalText(shape.output) !== text) return refuse('The file is not its own canonical form.');
  const against = contradiction(shape.output);
  return against === null ? { decision: shape.output } : { problem: against };
}

/** Why a decision cannot stand as it is, or null. */
export function contradiction(decided: DecisionBody): Problem | null {
  const { validity, decision, replaces, replacesWhy, decidedAt, keepUntil, machine } = decided;
  if (validity !== null && validity.until < validity.from)
    return { where: 'validity.until', says: 'It ends before it begins.' };
  if (validity !== null && decision !== 'demonstrated')
    return { where: 'validity', says: 'Only what was demonstrated can count for a time.' };
  if (decision === 'demonstrated' && machine.integrity !== 'same')
    return { where: 'decision', says: 'A run that cannot be believed demonstrates nothing.' };
  if ((replaces === null) !== (replacesWhy === null))
    return { where: 'replacesWhy', says: 'A decision that takes the place of another says which and why.' };
  if (keepUntil < decidedAt.slice(0, 10))
    return { where: 'keepUntil', says: 'It would be deleted before it was made.' };
  return null;
}

/** The exact text that is signed: the decision without its signature. */
export function textToSign(decided: DecisionBody | Decision): string {
  return canonicalText(Object.fromEntries(Object.entries(decided).filter(([name]) => name !== 'signature')));
}

/** The decision's one exact text. Its UTF-8 bytes are the file. */
export function decisionText(decision: Decision): string {
  return canonicalText(decision);
}

/** SHA-256 of the decision's file, 64 hex digits: what a later decision refers to. */
export function digestOfDecision(decision: Decision): string {
  return digestOfText(decisionText(decision));
}
