import type { Order, Told } from './orders.ts';

/** Work under way, which can be stopped. */
export interface Work {
  stop(): void;
}

/** Has an order carried out by a worker of its own; `failed` is told why where it cannot run. */
export function perform(order: Order, hear: (told: Told) => void, failed: (why: string) => void): Work {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', (event: MessageEvent<Told>) => {
    if (event.data.kind !== 'progress') worker.terminate();
    hear(event.data);
  });
  worker.addEventListener('error', (event) => {
    worker.terminate();
    failed(event.message);
  });
  worker.postMessage(order);
  return { stop: () => worker.terminate() };
}
