import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import { noOpinion } from '../../core/review/index.ts';
import {
  archiveText,
  byTime,
  keepable,
  keptBecause,
  type KeptDecision,
  type KeptFile,
  type KeptPapers,
} from './rules.ts';
import { MustBeKept, type Desk } from './types.ts';

interface Tables extends DBSchema {
  /** Bytes lie apart from lines, so that ten thousand lines are listed without them. */
  rows: { key: string; value: Omit<KeptFile, 'bytes'> };
  files: { key: string; value: Pick<KeptFile, 'digest' | 'bytes'> };
  papers: { key: string; value: KeptPapers };
  decisions: { key: string; value: KeptDecision; indexes: { runDigest: string } };
}
type Table = 'rows' | 'files' | 'papers' | 'decisions';
type Write = IDBPTransaction<Tables, Table[], 'readwrite'>;

/** On the disk when the promise resolves, not merely handed to the system. */
const strict = { durability: 'strict' } as const;
const tables: Table[] = ['rows', 'files', 'papers', 'decisions'];

/** What each version of the tables added. A database of any older version is brought up step by step. */
const steps: readonly ((database: IDBPDatabase<Tables>) => void)[] = [
  (database) => {
    database.createObjectStore('rows', { keyPath: 'digest' });
    database.createObjectStore('files', { keyPath: 'digest' });
    database.createObjectStore('papers', { keyPath: 'digest' });
  },
  (database) => {
    const decisions = database.createObjectStore('decisions', { keyPath: 'digest' });
    decisions.createIndex('runDigest', 'runDigest');
  },
];

/**
 * Keeps an assessor's desk in IndexedDB, apart from the runs made in this browser.
 * @throws DOMException when the browser refuses storage (private window, blocked, disk full)
 */
export async function openDeskDatabase(name = 'stillmain-desk'): Promise<Desk> {
  const database = await openDB<Tables>(name, steps.length, {
    upgrade(opened, from) {
      for (const step of steps.slice(from)) step(opened);
    },
    blocking(_current, _blocked, event) {
      if (event.target instanceof IDBDatabase) event.target.close();
    },
  });

  /** One transaction: all of it or nothing. What the change throws undoes it. */
  async function change<T>(act: (write: Write) => Promise<T>): Promise<T> {
    const write = database.transaction(tables, 'readwrite', strict);
    try {
      const done = await act(write);
      await write.done;
      return done;
    } catch (reason) {
      try {
        write.abort();
      } catch (ended) {
        if (!(ended instanceof DOMException)) throw ended;
      }
      await write.done.catch(() => undefined);
      throw reason;
    }
  }

  async function isChanged(write: Write, digest: string): Promise<void> {
    const rows = write.objectStore('rows');
    const kept = await rows.get(digest);
    if (kept?.exported) await rows.put({ ...kept, exported: false });
  }

  async function keepPapers(digest: string, changes: Partial<KeptPapers>): Promise<void> {
    await change(async (write) => {
      const papers = write.objectStore('papers');
      const kept = (await papers.get(digest)) ?? { digest, opinion: noOpinion, notes: [] };
      await papers.put({ ...kept, ...changes });
      await isChanged(write, digest);
    });
  }

  const decisionsOn = (digest: string): Promise<KeptDecision[]> =>
    database.getAllFromIndex('decisions', 'runDigest', digest);

  async function findFile(digest: string): Promise<KeptFile | undefined> {
    const [row, file] = await Promise.all([database.get('rows', digest), database.get('files', digest)]);
    return row && file && { ...row, ...file };
  }

  return {
    notKept: null,
    takeIn: (handedIn) =>
      change(async (write) => {
        const rows = write.objectStore('rows');
        for (const { row, bytes } of handedIn) {
          const { digest } = row;
          if ((await rows.getKey(digest)) !== undefined) continue;
          await rows.add({ digest, row, exported: false });
          await write.objectStore('files').add({ digest, bytes });
        }
      }),
    listRows: async () => (await database.getAll('rows')).map(({ row }) => row),
    keepRows: (lines) =>
      change(async (write) => {
        const rows = write.objectStore('rows');
        for (const row of lines)
          if ((await rows.getKey(row.digest)) !== undefined)
            await rows.put({ digest: row.digest, row, exported: false });
      }),
    findBytes: async (digest) => (await database.get('files', digest))?.bytes,
    findOpinion: async (digest) => (await database.get('papers', digest))?.opinion ?? noOpinion,
    listBegun: async () => await database.getAllKeys('papers'),
    keepOpinion: (digest, opinion) => keepPapers(digest, { opinion }),
    listNotes: async (digest) => (await database.get('papers', digest))?.notes ?? [],
    keepNotes: (digest, notes) => keepPapers(digest, { notes }),
    decide: (decision) =>
      change(async (write) => {
        const decisions = write.objectStore('decisions');
        await decisions.add(keepable(decision, await decisions.getAll()));
        await isChanged(write, decision.run.digest);
      }),
    listDecisions: async () =>
      (await database.getAll('decisions')).sort(byTime).map(({ decision }) => decision),
    exportAll: () =>
      change(async (write) => {
        const [rows, files, papers, decisions] = await Promise.all([
          write.objectStore('rows').getAll(),
          write.objectStore('files').getAll(),
          write.objectStore('papers').getAll(),
          write.objectStore('decisions').getAll(),
        ]);
        const bytesOf = new Map(files.map(({ digest, bytes }) => [digest, bytes]));
        const whole = rows.map((row) => ({ ...row, bytes: bytesOf.get(row.digest) ?? new Uint8Array() }));
        for (const row of rows) await write.objectStore('rows').put({ ...row, exported: true });
        return archiveText(whole, papers, decisions);
      }),
    keptBecause: async (digest, today) =>
      keptBecause(await findFile(digest), await decisionsOn(digest), today),
    async remove(digest, today) {
      await change(async (write) => {
        const decisions = write.objectStore('decisions');
        const on = await decisions.index('runDigest').getAll(digest);
        const row = await write.objectStore('rows').get(digest);
        const why = keptBecause(row && { ...row, bytes: new Uint8Array() }, on, today);
        if (why !== null) throw new MustBeKept(why);
        for (const table of ['rows', 'files', 'papers'] as const)
          await write.objectStore(table).delete(digest);
        for (const decision of on) await decisions.delete(decision.digest);
      });
    },
  };
}
