import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from 'commander';
import { cohort } from '../../core/hands/index.ts';
import type { JudgingChange } from '../../core/review/index.ts';
import { recordText } from '../../core/run/index.ts';
import { headings, type Heading, type Scenario } from '../../core/scenario/index.ts';
import { reasonOf, Unusable, type CommandIo } from '../io.ts';
import { listRuns, readScenario } from '../readInput.ts';
import { makeReport } from './makeReport.ts';
import { rejudgeMany } from './rejudgeMany.ts';
import { wordRejudged } from './wordRejudged.ts';

/** The commands of an assessor: report, rejudge, cohort. `shipped` is what a cohort performs when nothing is named. */
export function addReview(
  program: Command,
  io: CommandIo,
  shipped: () => Scenario,
  ends: (good: boolean) => void,
): void {
  addReport(program, io);
  addRejudge(program, io, ends);
  addCohort(program, io, shipped);
}

function addReport(program: Command, io: CommandIo): void {
  program
    .command('report')
    .description('write one run as a page for paper')
    .argument('<run>', 'run file')
    .requiredOption('-o, --output <file>', 'write the page here')
    .option('--decision <file>', 'a decision on this run, checked and put in')
    .option('--units <system>', 'us or si first; the others stand beside', 'us')
    .option('--language <language>', 'en or es', 'en')
    .option('--hide-marks', 'leave out scores and points')
    .action(
      async (
        run: string,
        o: { output: string; decision?: string; units: string; language: string; hideMarks?: boolean },
      ) => {
        await makeReport({ run, ...o, decision: o.decision ?? null, hideMarks: o.hideMarks === true });
        io.err(`${o.output} is written.`);
      },
    );
}

interface RejudgeAsked {
  readonly scenario?: string;
  readonly weights?: string;
  readonly cut?: string;
  readonly journal?: string;
  readonly keep?: string;
  readonly json?: boolean;
}

function addRejudge(program: Command, io: CommandIo, ends: (good: boolean) => void): void {
  program
    .command('rejudge')
    .description('judge runs again after a change, and show who changes and why')
    .argument('<run...>', 'run files, or folders of them')
    .option('--scenario <file>', 'take hold points, limits, weights and cut score from this exercise')
    .option('--weights <list>', `weights by heading, as holdPoints=50,kit=5 (${headings.join(', ')})`)
    .option('--cut <score>', 'least score of a pass')
    .option('--journal <file>', 'write down what is done; cut off, go on from there')
    .option('--keep <csv>', 'write the table of the new judgements here')
    .option('--json', 'one JSON document on standard output')
    .action(async (places: string[], o: RejudgeAsked) => {
      const told = await rejudgeMany(
        listRuns(places),
        { change: changeOf(o), journal: o.journal ?? null, keep: o.keep ?? null },
        io,
      );
      io.out(o.json ? JSON.stringify(told) : wordRejudged(told));
      ends(
        told.refused.length === 0 &&
          told.changed.every(({ change }) => change.verdict[0] === change.verdict[1]),
      );
    });
}

function changeOf({ scenario, weights, cut }: RejudgeAsked): JudgingChange {
  const change: JudgingChange = {
    ...(scenario === undefined ? {} : { scenario: readScenario(scenario) }),
    ...(weights === undefined ? {} : { weights: weightsOf(weights) }),
    ...(cut === undefined ? {} : { cutScore: pointsOf(cut, '--cut') }),
  };
  return change;
}

function weightsOf(list: string): Partial<Scenario['weights']> {
  const pairs = list.split(',').map((pair): [Heading, number] => {
    const [name, value] = pair.split('=');
    const heading = headings.find((one) => one === name.trim());
    if (heading === undefined)
      throw new Unusable(`--weights: there is no heading called ${name}; there are ${headings.join(', ')}.`);
    return [heading, pointsOf(value ?? '', `--weights, ${heading}`)];
  });
  return Object.fromEntries(pairs);
}

function pointsOf(text: string, where: string): number {
  const points = Number(text);
  if (text.trim() === '' || !(points >= 0 && points <= 100))
    throw new Unusable(`${where}: a number from 0 to 100 is needed, not ${text === '' ? 'nothing' : text}.`);
  return points;
}

function addCohort(program: Command, io: CommandIo, shipped: () => Scenario): void {
  program
    .command('cohort')
    .description('invent runs of trainees who do not exist, to try the review with')
    .argument('[scenario...]', 'folders or files of exercises; the first one shipped where none is named')
    .option('--size <n>', 'how many runs', '40')
    .option('--seed <n>', 'the same seed gives the same runs', '1')
    .requiredOption('-o, --output <folder>', 'write the runs here')
    .action((places: string[], o: { size: string; seed: string; output: string }) => {
      const scenarios = places.length === 0 ? [shipped()] : places.map(readScenario);
      const size = wholeOf(o.size, '--size', 1, 100000);
      const seed = wholeOf(o.seed, '--seed', 0, 4294967295);
      let made = 0;
      for (const { name, record } of cohort({ scenarios, size, seed })) {
        writeRun(o.output, name, recordText(record));
        made += 1;
        if (made % 20 === 0 || made === size) io.err(`Made ${made} of ${size} …`);
      }
    });
}

function writeRun(folder: string, name: string, text: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, name), text);
  } catch (error) {
    throw new Unusable(`${folder}: cannot be written (${reasonOf(error)}).`);
  }
}

function wholeOf(text: string, where: string, low: number, high: number): number {
  const value = Number(text);
  if (text.trim() === '' || !Number.isInteger(value) || value < low || value > high)
    throw new Unusable(`${where}: a whole number from ${low} to ${high} is needed, not ${text}.`);
  return value;
}
