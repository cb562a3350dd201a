import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from 'commander';
import { countOf } from '../countOf.ts';
import { Unusable, type CommandIo } from '../io.ts';
import { workOnFiles } from '../threads.ts';
import type { NoticedExercise } from './noticeFile.ts';
import { isNoticedWell, wordNoticing } from './wordNoticing.ts';

/** Adds `noticing`: whether the judge notices every single slip that matters, and punishes none that does not. */
export function addNoticing(program: Command, io: CommandIo, ends: (good: boolean) => void): void {
  program
    .command('noticing')
    .description(
      'deviate once from the model run in every way a rule is written for, and print what the judge notices',
    )
    .argument('<scenario...>', 'folders or files of exercises, or a folder of such folders')
    .option('--every <n>', 'play each n-th deviation', '1')
    .option('--json', 'one JSON document on standard output')
    .action(async (places: string[], options: { every: string; json?: boolean }) => {
      const every = countOf(options.every);
      const files = places.flatMap(exercisesIn);
      if (files.length === 0) throw new Unusable(`${places.join(', ')}: there is no exercise here.`);
      const noticed = Array.from<NoticedExercise>({ length: files.length });
      await workOnFiles({ kind: 'notice', every }, files, io.workerFile, (done, index) => {
        noticed[index] = done;
        io.err(`${done.id}: ${done.noticed} of ${done.mattering} noticed …`);
      });
      io.out(options.json ? JSON.stringify({ exercises: noticed }) : wordNoticing(noticed));
      ends(isNoticedWell(noticed));
    });
}

/** An exercise itself, or every exercise in the folders below. */
function exercisesIn(place: string): readonly string[] {
  if (place.endsWith('.json') || existsSync(join(place, 'scenario.json'))) return [place];
  if (!existsSync(place)) throw new Unusable(`${place}: there is no such file or folder.`);
  return readdirSync(place)
    .sort((a, b) => (a < b ? -1 : 1))
    .map((name) => join(place, name))
    .filter((folder) => existsSync(join(folder, 'scenario.json')));
}
