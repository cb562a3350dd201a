import type { Assessment, HoldPointResult } from '../judge/index.ts';
import type { HoldPointId } from '../rig/index.ts';
import type { RecordEntry, RunRecord } from '../run/index.ts';
import type { BadPlace } from './badPlace.ts';
import type { Integrity, Reassessed } from './reassess.ts';

/** One run as a line of the table: small, so that ten thousand can be held. */
export interface RunRow {
  /** SHA-256 of the file, which names the run everywhere. */
  readonly digest: string;
  /** The file's name as it was handed in. */
  readonly file: string;
  /** As the file says; else who wrote the crew's name into the record; else null. */
  readonly person: string | null;
  readonly attempt: number | null;
  /** Wall clock, ISO 8601, as the file says. */
  readonly begunAt: string | null;
  readonly scenarioId: string | null;
  readonly title: string | null;
  readonly engine: string | null;
  readonly integrity: Integrity;
  readonly firstBad: BadPlace | null;
  /** Judged now where the run is believed; else null. */
  readonly verdict: Assessment['verdict'] | null;
  readonly ending: Assessment['ending'] | null;
  readonly score: number | null;
  readonly headings: Assessment['headings'] | null;
  /** Critical findings, by their ids. */
  readonly critical: readonly string[];
  readonly holdPoints: readonly HoldPointResult[];
  /** Hold points signed without the evidence. */
  readonly falselySigned: readonly HoldPointId[];
  readonly actions: number;
  readonly simulatedS: number | null;
  /** How it was sat, as the file says; null where it says nothing. Lines kept before this was asked have none. */
  readonly sitting?: RunRecord['sitting'] | null;
  /** What the file's maker said of it. */
  readonly said: { readonly verdict: Assessment['verdict']; readonly score: number } | null;
}

/** The line of a file in the table. */
export function rowOf(file: string, told: Reassessed): RunRow {
  const { record, survived, integrity, firstBad, fileDigest } = told;
  const judged = integrity === 'same' ? told.assessment : null;
  const entries = record?.entries ?? survived?.entries ?? [];
  return {
    digest: fileDigest,
    file,
    person: record?.by?.person ?? survived?.person ?? crewOf(entries),
    attempt: record?.by?.attempt ?? null,
    begunAt: record?.by?.begunAt ?? null,
    scenarioId: record?.scenario.id ?? null,
    title: record?.scenario.title ?? survived?.title ?? null,
    engine: record?.engine ?? survived?.engine ?? null,
    integrity,
    firstBad,
    verdict: judged?.verdict ?? null,
    ending: judged?.ending ?? null,
    score: judged?.score ?? null,
    headings: judged?.headings ?? null,
    critical: judged?.findings.filter((f) => f.critical).map((f) => f.id) ?? [],
    holdPoints: judged?.holdPoints ?? [],
    falselySigned: judged?.holdPoints.filter((h) => h.outcome === 'false').map((h) => h.id) ?? [],
    actions: entries.length,
    simulatedS: record?.endS ?? null,
    sitting: record?.sitting ?? null,
    said: record?.said ?? null,
  };
}

/** Who wrote the crew's name into the record, or null. */
function crewOf(entries: readonly RecordEntry[]): string | null {
  for (const { action } of entries)
    if (action.kind === 'record.write' && action.field === 'crew') return action.value;
  return null;
}
