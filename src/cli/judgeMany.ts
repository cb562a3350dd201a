import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import { judgeFile, type JudgedFile } from './judgeFile.ts';

/** Files that one thread judges sooner than another thread starts. */
const WORTH_A_THREAD = 12;

/** Judges files in the order given, on all cores where there are many. `told` hears how many are done. */
export async function judgeMany(
  files: readonly string[],
  workerFile: string | null,
  told: (done: number) => void,
): Promise<JudgedFile[]> {
  const threads = Math.min(availableParallelism(), Math.floor(files.length / WORTH_A_THREAD));
  if (workerFile === null || threads < 2) {
    return files.map((file, i) => {
      const judged = judgeFile(file);
      told(i + 1);
      return judged;
    });
  }
  const results = new Map<number, JudgedFile>();
  const shares = Array.from({ length: threads }, (_, n) =>
    files.map((_, i) => i).filter((i) => i % threads === n),
  );
  await Promise.all(
    shares.map((share) =>
      judgeShare(workerFile, files, share, (index, judged) => {
        results.set(index, judged);
        told(results.size);
      }),
    ),
  );
  return files.map((file, i) => {
    const judged = results.get(i);
    if (!judged) throw new Error(`${file} was not judged`);
    return judged;
  });
}

interface Share {
  readonly work: { readonly index: number; readonly file: string }[];
}
interface Told {
  readonly index: number;
  readonly judged: JudgedFile;
}

function judgeShare(
  workerFile: string,
  files: readonly string[],
  share: readonly number[],
  take: (index: number, judged: JudgedFile) => void,
): Promise<void> {
  const data: Share = { work: share.map((index) => ({ index, file: files[index] })) };
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerFile, { workerData: data });
    worker.on('message', ({ index, judged }: Told) => take(index, judged));
    worker.on('error', reject);
    worker.on('exit', () => resolve());
  });
}

/** What a worker thread does: judges its share and tells each result as it comes. */
export function judgeInThread(): void {
  const { work } = workerData as Share;
  for (const { index, file } of work)
    parentPort?.postMessage({ index, judged: judgeFile(file) } satisfies Told);
}
