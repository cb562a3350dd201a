// Two builds from one source: the page for browsers and the command line for Node.
import { createHash } from 'node:crypto';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { runTool } from './command.mjs';
import { appFolder, commandFile, inRoot, rootFolder } from './places.mjs';

const sources = ['src', 'assets', 'scenarios', 'vite.config.ts', 'package-lock.json'];
const stampFile = inRoot('dist', 'built-from.txt');

/**
 * @param {string} place
 * @returns {string[]} every file at or below it, in a fixed order
 */
function listFiles(place) {
  if (!existsSync(place)) return [];
  const entries = readdirSync(place, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const path = join(place, entry.name);
    return entry.isDirectory() ? listFiles(path) : [path];
  });
}

/** A digest of everything the builds read: dates are not trusted, a deleted file counts too. */
function fingerprintSources() {
  const hash = createHash('sha256');
  for (const name of sources) {
    const place = inRoot(name);
    const files = /\.\w+$/.test(name) ? [place] : listFiles(place);
    for (const file of files) hash.update(relative(rootFolder, file)).update('\0').update(readFileSync(file));
  }
  return hash.digest('hex');
}

/**
 * npm links the bins of dependencies but not the package's own, so `npx --no-install stillmain` needs this link,
 * and the shell needs to be told that the file is for Node.
 */
function linkCommand() {
  const link = inRoot('node_modules', '.bin', 'stillmain');
  const text = readFileSync(commandFile, 'utf8');
  if (!text.startsWith('#!')) writeFileSync(commandFile, `#!/usr/bin/env node\n${text}`);
  chmodSync(commandFile, 0o755);
  mkdirSync(dirname(link), { recursive: true });
  rmSync(link, { force: true });
  symlinkSync(relative(dirname(link), commandFile), link);
}

/** @returns {Promise<boolean>} true when both builds ended well */
export async function buildAll() {
  rmSync(stampFile, { force: true });
  const fingerprint = fingerprintSources();
  const app = await runTool('vite', ['build', '--logLevel', 'warn']);
  const command = await runTool('vite', ['build', '--ssr', 'cli.ts', '--logLevel', 'warn']);
  if (!app) console.error('The page could not be built: see the message above.');
  if (!command) console.error('The command line could not be built: see the message above.');
  if (!app || !command) return false;
  linkCommand();
  writeFileSync(stampFile, `${fingerprint}\n`);
  return true;
}

/** Builds only when the sources differ from those of the last good build. */
export async function buildIfChanged() {
  const stamp = existsSync(stampFile) ? readFileSync(stampFile, 'utf8').trim() : '';
  const complete = existsSync(join(appFolder, 'index.html')) && existsSync(commandFile);
  if (!complete || stamp !== fingerprintSources()) {
    console.log('Building the page and the command line …');
    return buildAll();
  }
  linkCommand();
  return true;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = (await buildAll()) ? 0 : 1;
}
