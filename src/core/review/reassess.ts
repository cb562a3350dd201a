import {
  digestOf,
  ENGINE,
  PreludeRefused,
  replay,
  ReplayRefused,
  type RunRecord,
  type RunState,
} from '../run/index.ts';
import { assess, type Assessment } from '../judge/index.ts';
import { parseFile } from './parseFile.ts';
import type { BadPlace } from './badPlace.ts';
import type { Survived } from './salvage.ts';

/**
 * How far a file may be believed. `same`: judged again, equal to the last bit. `differs`: another engine made it, so
 * it is shown with what it says and not judged. `altered`: a run, but not as it was sealed. `damaged`: no run can be
 * read from it.
 */
export const integrities = ['same', 'differs', 'altered', 'damaged'] as const;
export type Integrity = (typeof integrities)[number];

/** One file, judged again from its actions. */
export interface Reassessed {
  readonly integrity: Integrity;
  /** SHA-256 of the file's bytes, 64 hex digits: what a decision refers to. */
  readonly fileDigest: string;
  /** Where it cannot be believed; null for `same` and `differs`. */
  readonly firstBad: BadPlace | null;
  /** What can still be read of a damaged file. */
  readonly survived: Survived | null;
  /** The file as it stands: what it says of itself (engine, person, verdict then). Null when damaged. */
  readonly record: RunRecord | null;
  /** The judgement of now; null where the run cannot be played again. For `altered` it judges what the file now says. */
  readonly assessment: Assessment | null;
}

/** A file judged again, with the run as it ended for those who look further. */
export interface ReassessedRun extends Reassessed {
  readonly end: RunState | null;
}

/** Judges a run file from its bytes. Pure; never throws for what a file holds. */
export function reassess(bytes: Uint8Array | string): Reassessed {
  const { integrity, fileDigest, firstBad, survived, record, assessment } = reassessRun(bytes);
  return { integrity, fileDigest, firstBad, survived, record, assessment };
}

/** The same, and the run as it ended. */
export function reassessRun(bytes: Uint8Array | string): ReassessedRun {
  const file = parseFile(bytes);
  const { fileDigest } = file;
  if ('damage' in file) {
    const { damage, survived } = file;
    return {
      integrity: 'damaged',
      fileDigest,
      firstBad: damage,
      survived,
      record: null,
      assessment: null,
      end: null,
    };
  }
  const { record, firstBad } = file;
  const base = { fileDigest, survived: null, record };
  if (firstBad === null && record.engine !== ENGINE)
    return { ...base, integrity: 'differs', firstBad: null, assessment: null, end: null };
  const played = playAgain(record);
  if ('refused' in played) {
    const bad = firstBad ?? played.refused;
    return { ...base, integrity: 'altered', firstBad: bad, assessment: null, end: null };
  }
  const { end } = played;
  const digest = digestOf(end);
  const assessment = { ...assess(end, record.sitting?.asked ?? 0), digest, engine: ENGINE };
  const atEnd: BadPlace | null =
    digest === record.endDigest
      ? null
      : { why: 'otherEnd', where: 'endDigest', entry: null, byte: null, says: '' };
  const bad = firstBad ?? atEnd;
  return { ...base, integrity: bad === null ? 'same' : 'altered', firstBad: bad, assessment, end };
}

function playAgain(record: RunRecord): { readonly end: RunState } | { readonly refused: BadPlace } {
  try {
    return { end: replay(record.scenario, record.entries, undefined, record.endS) };
  } catch (error) {
    if (error instanceof ReplayRefused) {
      const where = `entries[${error.index}].action`;
      return { refused: { why: 'impossible', where, entry: error.index, byte: null, says: error.message } };
    }
    if (error instanceof PreludeRefused) {
      const where = `scenario.prelude[${error.index}].action`;
      return { refused: { why: 'impossible', where, entry: null, byte: null, says: error.message } };
    }
    throw error;
  }
}
