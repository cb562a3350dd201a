import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { canonicalText, digestOfText, ENGINE } from '../../core/run/index.ts';
import type { JudgingChange } from '../../core/review/index.ts';
import { reasonOf, Unusable } from '../io.ts';
import type { RejudgedFile } from './rejudgeFile.ts';

/** What has been judged so far, a line a file, so that work that was cut off goes on where it stopped. */
export interface Journal {
  readonly file: string;
  /** The result of a file that was judged before and has not changed since; undefined where it must be judged. */
  find(file: string, digest: string): RejudgedFile | undefined;
  add(done: RejudgedFile): void;
}

interface Head {
  readonly format: 'stillmain-rejudge';
  readonly version: 1;
  readonly engine: string;
  /** Digest of what is judged otherwise. */
  readonly change: string;
}

/** Opens a journal, or begins it. Throws Unusable where it is of another change, engine or format. */
export function openJournal(file: string, change: JudgingChange): Journal {
  const head: Head = {
    format: 'stillmain-rejudge',
    version: 1,
    engine: ENGINE,
    change: digestOfText(canonicalText(change)),
  };
  const known = existsSync(file) ? readJournal(file, head) : begin(file, head);
  return {
    file,
    find(name, digest) {
      const found = known.get(name);
      // Asked for once; what has been told need not be held.
      known.delete(name);
      return found?.digest === digest ? found : undefined;
    },
    add: (done) => appendFileSync(file, `${JSON.stringify(done)}\n`),
  };
}

function begin(file: string, head: Head): Map<string, RejudgedFile> {
  try {
    writeFileSync(file, `${JSON.stringify(head)}\n`);
  } catch (error) {
    throw new Unusable(`${file}: cannot be written (${reasonOf(error)}).`);
  }
  return new Map();
}

function readJournal(file: string, head: Head): Map<string, RejudgedFile> {
  const text = readFileSync(file, 'utf8');
  const [first, ...lines] = text.split('\n');
  const found = jsonOf(first) as Partial<Head> | null;
  if (found?.format !== head.format || found.version !== head.version)
    throw new Unusable(`${file}, line 1: this is no journal of judging again.`);
  if (found.change !== head.change || found.engine !== head.engine)
    throw new Unusable(`${file}, line 1: this journal is of another change or engine; name another file.`);
  // Cut off in the middle of a line: that file is judged once more, on a line of its own.
  if (!text.endsWith('\n')) appendFileSync(file, '\n');
  const known = new Map<string, RejudgedFile>();
  for (const line of lines) {
    const done = jsonOf(line) as RejudgedFile | null;
    if (done !== null) known.set(done.file, done);
  }
  return known;
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line) as unknown;
  } catch {
    return null;
  }
}
