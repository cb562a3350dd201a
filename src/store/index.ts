export { nameFile, saveFile } from './files.ts';
export { openMemory } from './memory.ts';
export { openStore } from './store.ts';
export type { KeptRun, Store } from './types.ts';
export { claimWriter, type Writer } from './writer.ts';
export { MustBeKept, openDesk, openDeskMemory } from './desk/index.ts';
export type { Desk, HandedIn, Kept, Note } from './desk/index.ts';
export { openInstallation, verifyDecision } from './signing/index.ts';
export type { Installation, Signer } from './signing/index.ts';
