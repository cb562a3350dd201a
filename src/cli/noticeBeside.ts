import { parentPort, Worker, workerData } from 'node:worker_threads';
import { noticingOf, type Noticing } from '../core/prove/index.ts';
import type { Scenario } from '../core/scenario/index.ts';

/** What a thread that counts slips is given. */
export interface NoticingWork {
  readonly kind: 'noticing';
  readonly scenario: Scenario;
  readonly most: number;
}

/** Slips being counted in a thread of its own, while this one does other work. */
export interface Beside {
  readonly counted: Promise<Noticing | null>;
  readonly stop: () => void;
}

/** Begins to count, beside whatever the caller does next. */
export function noticeBeside(workerFile: string, scenario: Scenario, most: number): Beside {
  const work: NoticingWork = { kind: 'noticing', scenario, most };
  const worker = new Worker(workerFile, { workerData: work });
  const counted = new Promise<Noticing | null>((resolve, reject) => {
    worker.on('message', resolve);
    worker.on('error', reject);
    worker.on('exit', () => resolve(null));
  });
  return { counted, stop: () => void worker.terminate() };
}

/** What such a thread does. */
export function noticeInThread(): void {
  const { scenario, most } = workerData as NoticingWork;
  parentPort?.postMessage(noticingOf(scenario, () => true, most));
}
