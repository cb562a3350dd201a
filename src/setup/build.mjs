// Two builds from one source: the page for browsers and the command line for Node. Before them, the checks the page shows.
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
import { appFolder, checksFolder, commandFile, gatheredChecksFile, inRoot, rootFolder } from './places.mjs';

const checkSources = [
  'src/core/units',
  'src/core/catalogue',
  'src/core/physics',
  'src/core/review/group',
  'src/cli/bench',
  'tests/published',
  'tests/physics/vessels.ts',
  'package-lock.json',
];
const sources = ['src', 'assets', 'scenarios', 'vite.config.ts', ...checkSources];
const stampFile = inRoot('dist', 'built-from.txt');
const checkStampFile = inRoot('dist', 'checked-from.txt');

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

/**
 * A digest of everything a step reads: dates are not trusted, a deleted file counts too.
 * @param {string[]} places files and folders below the repository root
 */
function fingerprint(places) {
  const hash = createHash('sha256');
  for (const name of places) {
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

/** @param {string} file */
const readStamp = (file) => (existsSync(file) ? readFileSync(file, 'utf8').trim() : '');

/** What the checks were made from, and which results they left: none may be missing. */
const checksNow = () =>
  [fingerprint(checkSources), ...listFiles(checksFolder).map((file) => relative(checksFolder, file))].join(
    '\n',
  );

/** One file of all results, which the page fetches when it is opened: data, not script. */
function gatherChecks() {
  /** @param {string} file */
  const read = (file) => JSON.parse(readFileSync(file, 'utf8'));
  const published = listFiles(join(checksFolder, 'published')).flatMap(read);
  const sensitivity = read(join(checksFolder, 'assumed.json'));
  mkdirSync(dirname(gatheredChecksFile), { recursive: true });
  writeFileSync(gatheredChecksFile, `${JSON.stringify({ published, sensitivity })}\n`);
}

/**
 * The page shows every published check with our number beside it, so they are run before it is built, when their
 * results are missing or older than the laws, the numbers or the checks themselves.
 * @returns {Promise<boolean>} true when all hold
 */
export async function checkIfChanged() {
  if (readStamp(checkStampFile) === checksNow()) {
    gatherChecks();
    return true;
  }
  console.log('Holding the laws against their published numbers …');
  rmSync(checkStampFile, { force: true });
  rmSync(checksFolder, { recursive: true, force: true });
  if (!(await runTool('vitest', ['run', '--project', 'plain', 'tests/published']))) {
    console.error(
      'The published checks do not hold, so the model card cannot be built: see the message above.',
    );
    return false;
  }
  writeFileSync(checkStampFile, `${checksNow()}\n`);
  gatherChecks();
  return true;
}

/** @returns {Promise<boolean>} true when the checks hold and both builds ended well */
export async function buildAll() {
  rmSync(stampFile, { force: true });
  const from = fingerprint(sources);
  if (!(await checkIfChanged())) return false;
  const app = await runTool('vite', ['build', '--logLevel', 'warn']);
  const command = await runTool('vite', ['build', '--ssr', 'cli.ts', '--logLevel', 'warn']);
  if (!app) console.error('The page could not be built: see the message above.');
  if (!command) console.error('The command line could not be built: see the message above.');
  if (!app || !command) return false;
  linkCommand();
  writeFileSync(stampFile, `${from}\n`);
  return true;
}

/** Builds only when the sources differ from those of the last good build. */
export async function buildIfChanged() {
  const complete = existsSync(join(appFolder, 'index.html')) && existsSync(commandFile);
  if (!complete || readStamp(stampFile) !== fingerprint(sources)) {
    console.log('Building the page and the command line …');
    return buildAll();
  }
  linkCommand();
  return true;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = (await buildAll()) ? 0 : 1;
}
