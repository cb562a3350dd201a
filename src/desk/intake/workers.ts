import type { Scenario } from '../../core/scenario/index.ts';
import type { Order, Told } from './orders.ts';

/** Work under way, which can be stopped; what was told before that stays. */
export interface Work {
  /** Resolves when all is told or it was stopped; rejects where a worker cannot run. */
  readonly done: Promise<void>;
  stop(): void;
}

/** More workers than this would take the machine from the person at it. */
const mostWorkers = 4;
/** A share smaller than this is judged sooner than another worker starts. */
const worthAWorker = 8;

/** Has orders carried out by workers, one order a worker, and tells what comes as it comes. */
function perform(orders: readonly Order[], tell: (told: Told) => void): Work {
  const workers = orders.map(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));
  let settle: () => void = () => undefined;
  const stopped = new Promise<void>((resolve) => (settle = resolve));
  const all = workers.map(
    (worker, i) =>
      new Promise<void>((resolve, reject) => {
        worker.addEventListener('message', (event: MessageEvent<Told>) => {
          if (event.data.kind === 'done') resolve();
          else tell(event.data);
        });
        worker.addEventListener('error', (event) => reject(new Error(event.message)));
        worker.postMessage(orders[i]);
      }),
  );
  const end = (): void => workers.forEach((worker) => worker.terminate());
  return {
    done: Promise.race([Promise.all(all).then(() => undefined), stopped]).finally(end),
    stop() {
      end();
      settle();
    },
  };
}

/** Shares work among as many workers as are worth their start. */
export function performShared<T>(
  work: readonly T[],
  orderOf: (share: readonly T[]) => Order,
  tell: (told: Told) => void,
): Work {
  const cores = Math.max(1, navigator.hardwareConcurrency - 1);
  const many = Math.max(1, Math.min(mostWorkers, cores, Math.floor(work.length / worthAWorker)));
  const shares = Array.from({ length: many }, (_, n) => work.filter((_, i) => i % many === n));
  return perform(shares.map(orderOf), tell);
}

/** Has an invented cohort made and judged. */
export function performDemo(size: number, seed: number, tell: (told: Told) => void): Work {
  return perform([{ kind: 'demo', size, seed }], tell);
}

/** Has the model run of an exercise performed. */
export function performModel(scenario: Scenario, tell: (told: Told) => void): Work {
  return perform([{ kind: 'model', scenario }], tell);
}
