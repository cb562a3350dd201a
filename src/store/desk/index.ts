import { openDeskDatabase } from './database.ts';
import { openDeskMemory } from './memory.ts';
import type { Desk } from './types.ts';

export { openDeskMemory } from './memory.ts';
export { MustBeKept, type Desk, type HandedIn, type Kept, type Note } from './types.ts';

let opened: Promise<Desk> | null = null;

/** The desk of this page. Falls back to memory, saying why, where the browser refuses to keep anything. */
export function openDesk(): Promise<Desk> {
  opened ??= openDeskDatabase().catch((reason: unknown) =>
    openDeskMemory(reason instanceof Error ? reason.message : String(reason)),
  );
  return opened;
}
