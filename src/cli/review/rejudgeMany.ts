import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { csvOfRuns, type JudgementChange, type JudgingChange, type RunRow } from '../../core/review/index.ts';
import { reasonOf, Unusable, type CommandIo } from '../io.ts';
import { workOnFiles } from '../threads.ts';
import { openJournal, type Journal } from './journal.ts';
import type { RejudgedFile } from './rejudgeFile.ts';

export interface RejudgedMany {
  readonly files: number;
  readonly judged: number;
  /** Taken from the journal instead of being judged now. */
  readonly fromJournal: number;
  readonly unchanged: number;
  readonly changed: readonly Changed[];
  readonly refused: readonly { readonly file: string; readonly says: string }[];
  readonly journal: string | null;
  /** Largest memory of the process while it worked, bytes. */
  readonly peakRssBytes: number;
  readonly wallS: number;
  readonly perS: number;
}
export interface Changed {
  readonly file: string;
  readonly person: string | null;
  readonly change: JudgementChange;
}

export interface RejudgeOptions {
  readonly change: JudgingChange;
  readonly journal: string | null;
  /** Table of the judgements after the change, written when all is done. */
  readonly keep: string | null;
}

/**
 * Judges files as they stand and as they would be judged after a change; keeps nothing but the journal unless a table
 * is asked for. Of each file only what changes is held, so that memory does not grow with the runs.
 */
export async function rejudgeMany(
  files: readonly string[],
  { change, journal: journalFile, keep }: RejudgeOptions,
  io: CommandIo,
): Promise<RejudgedMany> {
  const startMs = performance.now();
  const journal = journalFile === null ? null : openJournal(journalFile, change);
  const changed: Changed[] = [];
  const refused: { file: string; says: string }[] = [];
  const rows: RunRow[] = [];
  let [done, unchanged, peakRssBytes] = [0, 0, 0];
  const take = (told: RejudgedFile): void => {
    done += 1;
    if (told.state === 'refused') refused.push({ file: told.file, says: told.says });
    else {
      if (told.change === null) unchanged += 1;
      else changed.push({ file: told.file, person: told.person, change: told.change });
      if (keep !== null) rows.push(told.row);
    }
    peakRssBytes = Math.max(peakRssBytes, process.memoryUsage.rss());
    if (done % 50 === 0 || done === files.length) io.err(`Judged ${done} of ${files.length} …`);
  };
  const left = journal === null ? files : files.filter((file) => !known(journal, file, take));
  const fromJournal = files.length - left.length;
  await workOnFiles({ kind: 'rejudge', change }, left, io.workerFile, (told) => {
    journal?.add(told);
    take(told);
  });
  if (keep !== null) writeTable(keep, rows);
  const wallS = (performance.now() - startMs) / 1000;
  const inOrder = (a: { file: string }, b: { file: string }): number => (a.file < b.file ? -1 : 1);
  return {
    files: files.length,
    judged: left.length,
    fromJournal,
    unchanged,
    changed: changed.sort(inOrder),
    refused: refused.sort(inOrder),
    journal: journalFile,
    peakRssBytes,
    wallS,
    perS: left.length / wallS,
  };
}

function known(journal: Journal, file: string, take: (told: RejudgedFile) => void): boolean {
  if (!existsSync(file)) return false;
  const digest = createHash('sha256').update(readFileSync(file)).digest('hex');
  const found = journal.find(file, digest);
  if (found === undefined) return false;
  take(found);
  return true;
}

function writeTable(file: string, rows: readonly RunRow[]): void {
  const ordered = [...rows].sort((a, b) => (a.file < b.file ? -1 : 1));
  try {
    writeFileSync(file, csvOfRuns(ordered));
  } catch (error) {
    throw new Unusable(`${file}: cannot be written (${reasonOf(error)}).`);
  }
}
