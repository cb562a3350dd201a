import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';
import { runCommand } from './cli/program.ts';
import { workInThread } from './cli/threads.ts';

// The same file serves as the command and as its worker threads.
if (isMainThread) {
  process.exitCode = await runCommand(process.argv.slice(2), {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(`${text}\n`),
    workerFile: fileURLToPath(import.meta.url),
  });
} else workInThread();
