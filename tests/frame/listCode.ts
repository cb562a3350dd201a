import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseSource, type SourceText } from './sourceText.ts';

const rootFolder = fileURLToPath(new URL('../../', import.meta.url));
const isCode = /\.(ts|svelte|mjs|js)$/;

/** Reads every code file below a folder of the repository, in a fixed order. */
export function readCode(folder: string): SourceText[] {
  return readdirSync(`${rootFolder}${folder}`, { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => isCode.test(path))
    .sort((a, b) => (a < b ? -1 : 1))
    .map((path) => parseSource(path, readFileSync(`${rootFolder}${path}`, 'utf8')));
}
