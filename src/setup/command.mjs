// Runs one outside command and tells how it ended. Nothing else.
import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { inRoot, rootFolder } from './places.mjs';

/**
 * Runs a command in the repository root with its output shown as it comes.
 * @param {string} name
 * @param {string[]} args
 * @returns {Promise<boolean>} true when it ended with exit code 0; false also when it could not be started
 */
export function runCommand(name, args) {
  return new Promise((resolve) => {
    const child = spawn(name, args, { cwd: rootFolder, stdio: ['ignore', 'inherit', 'inherit'] });
    child.on('error', (reason) => {
      console.error(`${name} could not be started: ${reason.message}`);
      resolve(false);
    });
    child.on('close', (code) => resolve(code === 0));
  });
}

/**
 * Runs a tool of node_modules by its own name, without asking npx each time.
 * @param {string} name
 * @param {string[]} args
 */
export const runTool = (name, args) => runCommand(inRoot('node_modules', '.bin', name), args);

/**
 * @param {string} name
 * @returns {string | undefined} the full path of a program on PATH
 */
export function findProgram(name) {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    const candidate = join(folder, name);
    try {
      accessSync(candidate, constants.X_OK);
      return candidate;
    } catch {
      continue;
    }
  }
  return undefined;
}
