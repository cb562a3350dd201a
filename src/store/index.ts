export { nameFile, saveFile } from './files.ts';
export { openMemory } from './memory.ts';
export { openStore } from './store.ts';
export type { KeptRun, Store } from './types.ts';
export { claimWriter, type Writer } from './writer.ts';
