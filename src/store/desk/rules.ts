import {
  contradiction,
  decisionText,
  digestOfDecision,
  type Decision,
  type Opinion,
  type RunRow,
} from '../../core/review/index.ts';
import type { Kept, Note } from './types.ts';

/** A run as the desk keeps it. */
export interface KeptFile {
  readonly digest: string;
  readonly row: RunRow;
  readonly bytes: Uint8Array;
  /** Whether all that hangs on it has left this browser since it was last changed. */
  readonly exported: boolean;
}
export interface KeptPapers {
  readonly digest: string;
  readonly opinion: Opinion;
  readonly notes: readonly Note[];
}
export interface KeptDecision {
  readonly digest: string;
  readonly runDigest: string;
  readonly decision: Decision;
}

/** A decision as it is kept. Throws an Error where it cannot stand. */
export function keepable(decision: Decision, others: readonly KeptDecision[]): KeptDecision {
  const against = contradiction(decision);
  if (against !== null) throw new Error(`${against.where}: ${against.says}`);
  const digest = digestOfDecision(decision);
  if (others.some((kept) => kept.digest === digest)) throw new Error('This decision is kept already.');
  const { replaces } = decision;
  if (replaces !== null) {
    const old = others.find((kept) => kept.digest === replaces);
    if (old === undefined) throw new Error('The decision that this one takes the place of is not here.');
    if (old.runDigest !== decision.run.digest)
      throw new Error('The decision that this one takes the place of is of another run.');
    if (others.some((kept) => kept.decision.replaces === replaces))
      throw new Error('Another decision has taken the place of that one already.');
  } else if (others.some((kept) => kept.runDigest === decision.run.digest && isBy(kept, decision)))
    throw new Error('This assessor has decided on this run: a change refers to that decision.');
  return { digest, runDigest: decision.run.digest, decision };
}

function isBy({ decision }: KeptDecision, other: Decision): boolean {
  return decision.assessor.name === other.assessor.name;
}

/** Oldest first. */
export function byTime(a: KeptDecision, b: KeptDecision): number {
  if (a.decision.decidedAt !== b.decision.decidedAt)
    return a.decision.decidedAt < b.decision.decidedAt ? -1 : 1;
  return a.digest < b.digest ? -1 : 1;
}

/** Why a run may not be deleted today, or null. Every decision on it must have run its time, and all have been exported. */
export function keptBecause(
  file: KeptFile | undefined,
  decisions: readonly KeptDecision[],
  today: string,
): Kept | null {
  if (file === undefined) return 'unknown';
  if (decisions.some(({ decision }) => decision.keepUntil > today)) return 'mustBeKept';
  return file.exported ? null : 'notExported';
}

/** Everything that is kept as one file: JSON, each run and decision as its own exact text. */
export function archiveText(
  files: readonly KeptFile[],
  papers: readonly KeptPapers[],
  decisions: readonly KeptDecision[],
): string {
  const paperOf = new Map(papers.map((paper) => [paper.digest, paper]));
  return JSON.stringify({
    format: 'stillmain-desk',
    version: 1,
    runs: files.map(({ digest, row, bytes }) => ({
      digest,
      file: row.file,
      // A damaged file may be no text at all.
      base64: toBase64(bytes),
      opinion: paperOf.get(digest)?.opinion ?? null,
      notes: paperOf.get(digest)?.notes ?? [],
    })),
    decisions: [...decisions].sort(byTime).map(({ decision }) => decisionText(decision)),
  });
}

function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(binary);
}
