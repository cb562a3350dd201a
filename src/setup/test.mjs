// `npm test`: everything that must hold before a change is taken in, with the time each part took.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { requireBrowsers } from './browsers.mjs';
import { installPackages } from './install.mjs';
import { requireNode } from './node.mjs';
import { listSuites } from './suites.mjs';
import { emptyTally } from './tally.mjs';

requireNode();
if (!(await installPackages()) || !(await requireBrowsers())) process.exit(1);

const reportFolder = mkdtempSync(join(tmpdir(), 'stillmain-test-'));
const rows = [];
for (const suite of listSuites(reportFolder)) {
  console.log(`\n=== ${suite.name}`);
  const startedMs = performance.now();
  const outcome = await suite.run();
  const seconds = (performance.now() - startedMs) / 1000;
  console.log(`=== ${suite.name}: ${outcome.ok ? 'ok' : 'FAILED'} in ${seconds.toFixed(1)} s`);
  rows.push({ name: suite.name, seconds, ok: outcome.ok, tally: outcome.tally ?? emptyTally });
}
rmSync(reportFolder, { recursive: true, force: true });

const total = rows.reduce((sum, row) => sum + row.seconds, 0);
console.log(`\n${'suite'.padEnd(12)}${'seconds'.padStart(9)}  ok`);
for (const row of rows)
  console.log(`${row.name.padEnd(12)}${row.seconds.toFixed(1).padStart(9)}  ${row.ok ? 'yes' : 'NO'}`);
console.log(`${'all'.padEnd(12)}${total.toFixed(1).padStart(9)}\n`);

const passed = rows.reduce((sum, row) => sum + row.tally.passed, 0);
const failed = rows.reduce((sum, row) => sum + row.tally.failed, 0);
const broken = rows.filter((row) => !row.ok).map((row) => row.name);
if (broken.length > 0) console.log(`Failed: ${broken.join(', ')}.`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = broken.length > 0 || failed > 0 ? 1 : 0;
