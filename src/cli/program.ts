import { Command, CommanderError } from 'commander';
import { checkLaws } from '../core/physics/index.ts';
import { decisionJsonSchema } from '../core/review/index.ts';
import { recordJsonSchema } from '../core/run/index.ts';
import { parseScenario, scenarioJsonSchema, setJsonSchema, type Scenario } from '../core/scenario/index.ts';
import { say } from '../text/index.ts';
import exerciseFile from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { countOf } from './countOf.ts';
import { bench, BENCH_SIZE, wordBench } from './bench/index.ts';
import { driveScenario, handNames } from './driveScenario.ts';
import { driveSet, setIn, wordSet } from './driveSet.ts';
import { makeDrill } from './makeDrill.ts';
import { exitCodes, reasonOf, Unusable, type CommandIo, type ExitCode } from './io.ts';
import { isGood, type JudgedFile } from './judgeFile.ts';
import { addNoticing } from './noticing/index.ts';
import { addProve } from './proveScenario.ts';
import { listRuns, readFile, readScenario } from './readInput.ts';
import { addReview } from './review/index.ts';
import { sensitivity, wordSensitivity } from './sensitivity.ts';
import { workOnFiles } from './threads.ts';
import { wordAssessment, wordFile, wordLaw } from './wordResult.ts';

/** Runs one command line; the code to exit with. Never throws for what a user typed or handed in. */
export async function runCommand(args: readonly string[], io: CommandIo): Promise<ExitCode> {
  let code: ExitCode = exitCodes.good;
  const program = new Command('stillmain')
    .description(`Drives, judges and describes exercises. ${say('caution.trains')} ${say('caution.first')}`)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text.trimEnd()),
      writeErr: (text) => io.err(text.trimEnd()),
    });
  const ends = (good: boolean) => {
    code = good ? exitCodes.good : exitCodes.bad;
  };
  addDrive(program, io, ends);
  addDrill(program, io);
  addJudge(program, io, ends, (unusable) => {
    code = unusable;
  });
  addProve(program, io, ends);
  addNoticing(program, io, ends);
  addLaws(program, io);
  addSchema(program, io);
  addBench(program, io);
  addSensitivity(program, io);
  addReview(program, io, shippedExercise, ends);
  try {
    await program.parseAsync(args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.good : exitCodes.unusable;
    io.err(error instanceof Unusable ? error.message : `Something failed inside: ${reasonOf(error)}`);
    return exitCodes.unusable;
  }
}

function addDrive(program: Command, io: CommandIo, ends: (good: boolean) => void): void {
  program
    .command('drive')
    .description('let a scripted hand perform an exercise or a set of them, and judge it')
    .argument('<scenario>', 'folder or file of the exercise, or file of a set')
    .option('--hand <name>', `which hand: ${handNames.join(', ')}`, 'steady')
    .option('-o, --output <file>', 'write the run here; of a set, the runs into this folder')
    .option('--json', 'one JSON document on standard output')
    .action((place: string, options: { hand: string; output?: string; json?: boolean }) => {
      const set = setIn(place);
      if (set !== null) {
        const made = driveSet(set, place, options.hand, options.output, io.err);
        io.out(options.json ? JSON.stringify(made) : `${wordSet(made)}\n${say('caution.trains')}`);
        ends(made.verdict === 'pass');
        return;
      }
      const scenario = readScenario(place);
      io.err(`Driving ${scenario.id} by the ${options.hand} hand …`);
      const result = driveScenario(scenario, options.hand, options.output);
      io.out(options.json ? JSON.stringify(result) : wordAssessment(scenario, result));
      ends(result.verdict === 'pass');
    });
}

function addDrill(program: Command, io: CommandIo): void {
  program
    .command('drill')
    .description('make a drill of an exercise: the steady hand does all that comes before a stage')
    .argument('<scenario>', 'folder or file of the exercise')
    .requiredOption('--stage <stage>', 'stage the trainee begins with, s1 to s12')
    .option('--to <stage>', 'last stage of the drill (the same, where it is not said)')
    .option('--id <name>', 'what the drill is called')
    .requiredOption('-o, --output <file>', 'write the drill here')
    .option('--json', 'one JSON document on standard output')
    .action((place: string, options: DrillOptions) => {
      const drill = makeDrill(readScenario(place), options);
      const done = {
        id: drill.id,
        actions: drill.prelude.length,
        holdPoints: drill.holdPoints.map((h) => h.id),
      };
      io.out(
        options.json
          ? JSON.stringify(done)
          : `${done.id}: ${done.actions} actions done before, then ${done.holdPoints.join(', ')}`,
      );
    });
}

interface DrillOptions {
  readonly stage: string;
  readonly to?: string;
  readonly id?: string;
  readonly output: string;
  readonly json?: boolean;
}

function addJudge(
  program: Command,
  io: CommandIo,
  ends: (good: boolean) => void,
  endsUnusable: (code: ExitCode) => void,
): void {
  program
    .command('judge')
    .description('play run files again and judge them')
    .argument('<run...>', 'run files, or folders of them')
    .option('--json', 'one JSON document on standard output')
    .action(async (places: string[], options: { json?: boolean }) => {
      const files = listRuns(places);
      const runs = Array.from<JudgedFile>({ length: files.length });
      let done = 0;
      await workOnFiles({ kind: 'judge' }, files, io.workerFile, (judged, index) => {
        runs[index] = judged;
        done += 1;
        if (done === files.length || done % 50 === 0) io.err(`Judged ${done} of ${files.length} …`);
      });
      io.out(options.json ? JSON.stringify({ runs }) : runs.map(wordFile).join('\n'));
      ends(runs.every(isGood));
      for (const judged of runs) {
        if (judged.integrity !== 'unusable') continue;
        io.err(`${judged.file}: ${judged.says}`);
        endsUnusable(exitCodes.unusable);
      }
    });
}

function addLaws(program: Command, io: CommandIo): void {
  program
    .command('laws')
    .description('hold the laws of flow against a table of reference cases')
    .argument('<csv>', 'the table')
    .option('--json', 'one JSON document on standard output')
    .action((file: string, options: { json?: boolean }) => {
      const text = readFile(file);
      let rows;
      try {
        rows = checkLaws(text);
      } catch (error) {
        throw new Unusable(`${file}: ${reasonOf(error)}`);
      }
      io.out(options.json ? JSON.stringify(rows) : rows.map(wordLaw).join('\n'));
    });
}

function addSchema(program: Command, io: CommandIo): void {
  program
    .command('schema')
    .description('print the JSON Schema of a document')
    .argument('<document>', Object.keys(schemas).join(', '))
    .option('--json', 'the same: a schema is always JSON')
    .action((document: string) => {
      if (!Object.hasOwn(schemas, document))
        throw new Unusable(
          `There is no document called ${document}; there are ${Object.keys(schemas).join(', ')}.`,
        );
      io.out(JSON.stringify(schemas[document](), null, 2));
    });
}

const schemas: Readonly<Record<string, () => object>> = {
  scenario: scenarioJsonSchema,
  run: recordJsonSchema,
  set: setJsonSchema,
  decision: decisionJsonSchema,
};

function addBench(program: Command, io: CommandIo): void {
  program
    .command('bench')
    .description('measure what the engine costs on this machine')
    .option('--actions <n>', 'how many random actions', String(BENCH_SIZE.actions))
    .option('--openings <n>', 'how many random openings', String(BENCH_SIZE.openings))
    .option(
      '--patience <n>',
      'evaluations after which an explicit method gives up',
      String(BENCH_SIZE.patience),
    )
    .option('--json', 'one JSON document on standard output')
    .action((options: { actions: string; openings: string; patience: string; json?: boolean }) => {
      const size = {
        actions: countOf(options.actions),
        openings: countOf(options.openings),
        patience: countOf(options.patience),
      };
      const report = bench(shippedExercise(), size, io.err);
      io.out(options.json ? JSON.stringify(report) : wordBench(report));
    });
}

function shippedExercise(): Scenario {
  const parsed = parseScenario(exerciseFile);
  if ('problems' in parsed) throw new Unusable('The shipped exercise cannot be read.');
  return parsed.scenario;
}

function addSensitivity(program: Command, io: CommandIo): void {
  program
    .command('sensitivity')
    .description(
      'print what the range of each assumed number does to the proofs, the stop and the gas in the hole',
    )
    .option('--json', 'one JSON document on standard output')
    .action((options: { json?: boolean }) => {
      const report = sensitivity();
      io.out(options.json ? JSON.stringify(report) : wordSensitivity(report));
    });
}
