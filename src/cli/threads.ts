import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import type { JudgingChange } from '../core/review/index.ts';
import { noticeInThread, type NoticingWork } from './noticeBeside.ts';
import { noticeFile, type NoticedExercise } from './noticing/noticeFile.ts';
import { judgeFile, type JudgedFile } from './judgeFile.ts';
import { rejudgeFile, type RejudgedFile } from './review/rejudgeFile.ts';

/** What is done with each file. */
export type Work =
  | { readonly kind: 'judge' }
  | { readonly kind: 'rejudge'; readonly change: JudgingChange }
  | { readonly kind: 'notice'; readonly every: number };
interface DoneBy {
  readonly judge: JudgedFile;
  readonly rejudge: RejudgedFile;
  readonly notice: NoticedExercise;
}
type Done<W extends Work> = DoneBy[W['kind']];

/**
 * Room for what a judgement throws away, MB. A job asks for some 42 MB in all; with the usual 48 its leavings are swept
 * every third of it, which costs a twentieth to a tenth of its time.
 */
const YOUNG_ROOM_MB = 192;

/** Files that one thread works on sooner than another thread starts. */
const worthAThread: Readonly<Record<Work['kind'], number>> = { judge: 12, rejudge: 12, notice: 1 };

interface Asked {
  readonly index: number;
  readonly file: string;
}

/**
 * Works on files, on all cores where there are many; a thread is given its next file when it has done the last, so
 * that nothing piles up. `take` hears each result as it comes, in no order.
 */
export async function workOnFiles<W extends Work>(
  work: W,
  files: readonly string[],
  workerFile: string | null,
  take: (done: Done<W>, index: number) => void,
): Promise<void> {
  const threads = Math.min(availableParallelism(), Math.floor(files.length / worthAThread[work.kind]));
  if (workerFile === null || threads < 2) {
    files.forEach((file, i) => take(workOn(work, file) as Done<W>, i));
    return;
  }
  let next = 0;
  const ask = (): Asked | null => (next < files.length ? { index: next, file: files[next++] } : null);
  await Promise.all(Array.from({ length: threads }, () => runThread(workerFile, work, ask, take)));
}

function runThread<W extends Work>(
  workerFile: string,
  work: W,
  ask: () => Asked | null,
  take: (done: Done<W>, index: number) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerFile, {
      workerData: work,
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_ROOM_MB },
    });
    const give = (): void => worker.postMessage(ask());
    worker.on('message', ({ index, done }: { index: number; done: Done<W> }) => {
      take(done, index);
      give();
    });
    worker.on('error', reject);
    worker.on('exit', () => resolve());
    give();
  });
}

/** What a worker thread does: counts slips, or works on one file after the other until it is given none. */
export function workInThread(): void {
  const work = workerData as Work | NoticingWork;
  if (work.kind === 'noticing') {
    noticeInThread();
    return;
  }
  parentPort?.on('message', (asked: Asked | null) => {
    if (asked === null) parentPort?.close();
    else parentPort?.postMessage({ index: asked.index, done: workOn(work, asked.file) });
  });
}

function workOn(work: Work, file: string): DoneBy[Work['kind']] {
  switch (work.kind) {
    case 'judge':
      return judgeFile(file);
    case 'rejudge':
      return rejudgeFile(file, work.change);
    case 'notice':
      return noticeFile(file, work.every);
  }
}
