import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { atWork, freshRun, newestFirst, type KeptRun, type Store } from './types.ts';

interface Kept extends DBSchema {
  runs: { key: string; value: KeptRun };
  events: { key: [string, number]; value: { runId: string; sequence: number; event: unknown } };
  records: { key: string; value: { runId: string; record: string } };
}

/** On the disk when the promise resolves, not merely handed to the system. */
const strict = { durability: 'strict' } as const;

const allOf = (id: string): IDBKeyRange => IDBKeyRange.bound([id, 0], [id, Infinity]);

async function openKept(name: string): Promise<IDBPDatabase<Kept>> {
  return openDB<Kept>(name, 1, {
    upgrade(database) {
      database.createObjectStore('runs', { keyPath: 'id' });
      database.createObjectStore('events', { keyPath: ['runId', 'sequence'] });
      database.createObjectStore('records', { keyPath: 'runId' });
    },
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
    },
  });
}

/**
 * Keeps runs in IndexedDB, one transaction an event.
 * @throws DOMException when the browser refuses storage (private window, blocked, disk full)
 */
export async function openDatabase(name = 'stillmain'): Promise<Store> {
  const database = await openKept(name);

  async function keep(run: KeptRun, record: string | null): Promise<void> {
    const change = database.transaction(['runs', 'records'], 'readwrite', strict);
    await change.objectStore('runs').put(run);
    if (record !== null) await change.objectStore('records').put({ runId: run.id, record });
    await change.done;
  }

  async function mustFind(id: string): Promise<KeptRun> {
    const run = await database.get('runs', id);
    if (run === undefined) throw new Error('That run is no longer kept here.');
    return run;
  }

  async function appendAll(id: string, added: readonly unknown[], reachedS: number): Promise<void> {
    const change = database.transaction(['runs', 'events', 'records'], 'readwrite', strict);
    const runs = change.objectStore('runs');
    const events = change.objectStore('events');
    const run = await runs.get(id);
    if (run === undefined) {
      change.abort();
      await change.done.catch(() => undefined);
      throw new Error('That run is no longer kept here.');
    }
    const last = await events.openKeyCursor(allOf(id), 'prev');
    const from = last === null ? 0 : last.key[1] + 1;
    for (const [i, event] of added.entries()) await events.add({ runId: id, sequence: from + i, event });
    await runs.put(atWork(run, reachedS));
    await change.objectStore('records').delete(id);
    await change.done;
  }

  return {
    notKept: null,
    async begin(scenario, sat) {
      const run = freshRun(scenario, sat);
      await keep(run, null);
      return run;
    },
    listRuns: async () => newestFirst(await database.getAll('runs')),
    findRun: (id) => database.get('runs', id),
    async listEvents(id) {
      return (await database.getAll('events', allOf(id))).map((kept) => kept.event);
    },
    append: (id, event, reachedS) => appendAll(id, [event], reachedS),
    appendAll,
    async finish(id, record, judged) {
      await keep({ ...(await mustFind(id)), state: 'finished', ...judged }, record);
    },
    async findRecord(id) {
      return (await database.get('records', id))?.record;
    },
    async takeIn(scenario, record, reachedS, judged) {
      const run: KeptRun = { ...freshRun(scenario), reachedS, state: 'finished', ...judged };
      await keep(run, record);
      return run;
    },
    async remove(id) {
      const change = database.transaction(['runs', 'events', 'records'], 'readwrite', strict);
      await change.objectStore('runs').delete(id);
      await change.objectStore('events').delete(allOf(id));
      await change.objectStore('records').delete(id);
      await change.done;
    },
  };
}
