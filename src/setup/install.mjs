// Installs what the lockfile names, but only when what lies in node_modules is not that already.
import { readFileSync } from 'node:fs';
import { runCommand } from './command.mjs';
import { inRoot } from './places.mjs';

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean, link?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lockfile
 */

/**
 * Compares by content and not by date: a fresh checkout or a copied folder has dates that mean nothing.
 * @param {Lockfile} wanted package-lock.json
 * @param {Lockfile | undefined} installed node_modules/.package-lock.json, which npm writes after each install
 * @returns {boolean} true when every package stands at the version wanted (one for another platform may be missing)
 */
export function installMatches(wanted, installed) {
  if (installed?.packages === undefined) return false;
  const here = installed.packages;
  const wantedPackages = wanted.packages ?? {};
  const missing = Object.entries(wantedPackages).some(([place, entry]) => {
    if (place === '') return false;
    const found = here[place];
    if (found === undefined) return !(entry.optional === true || entry.devOptional === true);
    return found.version !== entry.version;
  });
  const extra = Object.keys(here).some((place) => wantedPackages[place] === undefined);
  return !missing && !extra;
}

/**
 * @param {string} file
 * @returns {Lockfile | undefined}
 */
function readLockfile(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/** @returns {Promise<boolean>} true when the packages are in place */
export async function installPackages() {
  const wanted = readLockfile(inRoot('package-lock.json'));
  if (wanted === undefined) {
    console.error('package-lock.json is missing or cannot be read, so nothing can be installed from it.');
    return false;
  }
  if (installMatches(wanted, readLockfile(inRoot('node_modules', '.package-lock.json')))) return true;
  console.log('Installing the packages that package-lock.json names …');
  const done = await runCommand('npm', ['ci', '--no-audit', '--no-fund']);
  if (!done)
    console.error(
      'npm ci failed: see its message above. A working connection to the npm registry is needed.',
    );
  return done;
}
