// Where things lie. Every set-up script starts from here, so that none depends on the folder it was called from.
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

export const rootFolder = fileURLToPath(new URL('../../', import.meta.url));

/** @param {string[]} parts path below the repository root */
export const inRoot = (...parts) => join(rootFolder, ...parts);

export const appFolder = inRoot('dist', 'app');
export const commandFile = inRoot('dist', 'cli', 'cli.js');
/** What the published checks leave, one file a source. */
export const checksFolder = inRoot('dist', 'checks');
/** The same in one file, which the page about the model fetches. */
export const gatheredChecksFile = inRoot('dist', 'shown', 'checks.json');
