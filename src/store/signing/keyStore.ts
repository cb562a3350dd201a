import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/**
 * The key of this installation. `platform`: made by the browser so that not even this page can read it out. `page`: for
 * browsers without Ed25519; the secret lies readable in this browser's storage, and is told so.
 */
export type KeptKey =
  | { readonly held: 'platform'; readonly pair: CryptoKeyPair }
  | { readonly held: 'page'; readonly secret: Uint8Array };

interface Tables extends DBSchema {
  keys: { key: 'installation'; value: KeptKey };
}

/** Where the key of an installation lies. */
export interface KeyStore {
  /** The key that is kept, or else the one made now: two pages asking at once get the same. */
  keep(make: () => Promise<KeptKey>): Promise<KeptKey>;
}

/** Keeps the key in IndexedDB. Rejects with a DOMException where the browser refuses storage. */
export async function openKeyStore(name = 'stillmain-key'): Promise<KeyStore> {
  const database: IDBPDatabase<Tables> = await openDB<Tables>(name, 1, {
    upgrade: (opened) => void opened.createObjectStore('keys'),
  });
  return {
    async keep(make) {
      const kept = await database.get('keys', 'installation');
      if (kept !== undefined) return kept;
      const made = await make();
      // A transaction does not outlast the making of a key: whoever came first in the meantime stays.
      const write = database.transaction('keys', 'readwrite', { durability: 'strict' });
      const first = await write.store.get('installation');
      if (first === undefined) await write.store.put(made, 'installation');
      await write.done;
      return first ?? made;
    },
  };
}

/** Keeps the key for as long as the page is open. */
export function openKeyMemory(): KeyStore {
  let kept: Promise<KeptKey> | null = null;
  return { keep: (make) => (kept ??= make()) };
}
