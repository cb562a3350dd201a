import { openDB, type DBSchema } from 'idb';
import { byChange, type BenchStore, type KeptExercise } from './types.ts';

interface KeptBench extends DBSchema {
  exercises: { key: string; value: KeptExercise };
}

/** On the disk when the promise resolves, not merely handed to the system. */
const strict = { durability: 'strict' } as const;

/**
 * Keeps exercises of one's own in a database apart from the runs and from the desk.
 * @throws DOMException when the browser refuses storage (private window, blocked, disk full)
 */
export async function openBenchDatabase(name = 'stillmain-bench'): Promise<BenchStore> {
  const database = await openDB<KeptBench>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('exercises', { keyPath: 'id' });
    },
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
    },
  });

  return {
    notKept: null,
    list: async () => byChange(await database.getAll('exercises')),
    find: (id) => database.get('exercises', id),
    async keep(exercise) {
      const change = database.transaction('exercises', 'readwrite', strict);
      await change.store.put(exercise);
      await change.done;
    },
    async remove(id) {
      const change = database.transaction('exercises', 'readwrite', strict);
      await change.store.delete(id);
      await change.done;
    },
  };
}
