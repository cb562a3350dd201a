import { atWork, freshRun, newestFirst, type KeptRun, type Store } from './types.ts';

/** Keeps runs for as long as the page is open: for browsers that refuse storage, and for tests of what stands above. */
export function openMemory(notKept: string): Store {
  const runs = new Map<string, KeptRun>();
  const events = new Map<string, unknown[]>();
  const records = new Map<string, string>();

  function found(id: string): KeptRun {
    const run = runs.get(id);
    if (run === undefined) throw new Error('That run is no longer kept here.');
    return run;
  }

  function change(id: string, changes: Partial<KeptRun>): void {
    runs.set(id, { ...found(id), ...changes });
  }

  async function appendAll(id: string, added: readonly unknown[], reachedS: number): Promise<void> {
    change(id, atWork(found(id), reachedS));
    records.delete(id);
    events.set(id, [...(events.get(id) ?? []), ...added]);
  }

  return {
    notKept,
    async begin(scenario, sat) {
      const run = freshRun(scenario, sat);
      runs.set(run.id, run);
      return run;
    },
    listRuns: async () => newestFirst([...runs.values()]),
    findRun: async (id) => runs.get(id),
    listEvents: async (id) => [...(events.get(id) ?? [])],
    append: (id, event, reachedS) => appendAll(id, [event], reachedS),
    appendAll,
    async finish(id, record, judged) {
      change(id, { state: 'finished', ...judged });
      records.set(id, record);
    },
    findRecord: async (id) => records.get(id),
    async takeIn(scenario, record, reachedS, judged) {
      const run: KeptRun = { ...freshRun(scenario), reachedS, state: 'finished', ...judged };
      runs.set(run.id, run);
      records.set(run.id, record);
      return run;
    },
    async remove(id) {
      runs.delete(id);
      events.delete(id);
      records.delete(id);
    },
  };
}
