import { openDatabase } from './database.ts';
import { openMemory } from './memory.ts';
import type { Store } from './types.ts';

let opened: Promise<Store> | null = null;

/** The store of this page. Falls back to memory, saying why, where the browser refuses to keep anything. */
export function openStore(): Promise<Store> {
  opened ??= openDatabase().catch((reason: unknown) =>
    openMemory(reason instanceof Error ? reason.message : String(reason)),
  );
  return opened;
}
