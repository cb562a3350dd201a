// What `npm test` runs, in this order: cheap and telling first. Each suite is one or more commands that must all end well.
import { buildAll } from './build.mjs';
import { runTool } from './command.mjs';
import { emptyTally, readTally } from './tally.mjs';

/**
 * @typedef {import('./tally.mjs').Tally} Tally
 * @typedef {{ ok: boolean, tally?: Tally }} Outcome
 * @typedef {{ name: string, run: () => Promise<Outcome> }} Suite
 */

/**
 * @param {string} name
 * @param {[string, string[]][]} commands
 * @returns {Suite}
 */
const tools = (name, commands) => ({
  name,
  run: async () => {
    let ok = true;
    for (const [tool, args] of commands) ok = (await runTool(tool, args)) && ok;
    return { ok };
  },
});

/**
 * @param {string} name
 * @param {string[]} args
 * @param {string} reportFile
 * @returns {Suite}
 */
const vitest = (name, args, reportFile) => ({
  name,
  run: async () => {
    const report = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
    const ended = await runTool('vitest', ['run', ...args, ...report]);
    const tally = readTally(reportFile);
    if (tally === undefined)
      console.error(`The ${name} suite left no report, so its tests are counted as failed.`);
    return { ok: ended && tally?.failed === 0, tally: tally ?? { ...emptyTally, failed: 1 } };
  },
});

/**
 * @param {string} reportFolder where vitest leaves its reports
 * @returns {Suite[]}
 */
export const listSuites = (reportFolder) => [
  tools('format', [['prettier', ['--check', '--log-level', 'warn', '.']]]),
  tools('lint', [['eslint', ['--max-warnings', '0', '.']]]),
  tools('types', [
    ['tsc', ['--noEmit', '-p', '.']],
    ['svelte-check', ['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human']],
  ]),
  tools('dead code', [['knip', ['--no-progress', '--no-config-hints']]]),
  { name: 'build', run: async () => ({ ok: await buildAll() }) },
  vitest('unit', ['--project', 'plain', '--project', 'screen'], `${reportFolder}/unit.json`),
  vitest('browser', ['--project', 'browser'], `${reportFolder}/browser.json`),
];
