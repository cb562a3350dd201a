import type { Command } from 'commander';
import { MOST_DEVIATIONS, prove, withNoticing, type Noticing, type Proof } from '../core/prove/index.ts';
import { clock, english, englishNotes, say, wordNote } from '../text/index.ts';
import { countOf } from './countOf.ts';
import type { CommandIo } from './io.ts';
import { noticeBeside } from './noticeBeside.ts';
import { readScenario } from './readInput.ts';
import type { Scenario } from '../core/scenario/index.ts';

/** Adds `prove`: is an exercise finishable, without dead ends, noticing and fair? Judged bad with a grave note. */
export function addProve(program: Command, io: CommandIo, ends: (good: boolean) => void): void {
  program
    .command('prove')
    .description('show that an exercise can be finished, has no dead end, notices slips and is fair')
    .argument('<scenario>', 'folder or file of the exercise')
    .option('--deviations <n>', 'slips played at most, spread evenly over all', String(MOST_DEVIATIONS))
    .option('--json', 'one JSON document on standard output')
    .action(async (place: string, options: { deviations: string; json?: boolean }) => {
      const scenario = readScenario(place);
      const deviations = countOf(options.deviations, 0);
      io.err(`Proving ${scenario.id} …`);
      const proof = await proveOnTwoThreads(scenario, deviations, io);
      io.out(options.json ? JSON.stringify(report(proof)) : wordProof(proof));
      ends(proof.proved);
    });
}

/** The slips are played in a thread beside the search, which takes about as long. */
async function proveOnTwoThreads(scenario: Scenario, deviations: number, io: CommandIo): Promise<Proof> {
  const tell = (part: string, share: number): boolean => {
    if (part === 'hands' || share === 1) io.err(`  ${part} ${Math.round(share * 100)} %`);
    return true;
  };
  if (io.workerFile === null || deviations === 0) return prove(scenario, tell, undefined, deviations);
  const beside = noticeBeside(io.workerFile, scenario, deviations);
  const proof = prove(scenario, tell, undefined, 0);
  if (proof.finishable) return withNoticing(proof, await beside.counted);
  beside.stop();
  return proof;
}

/** What the command line says of a proof: the fields a reader of JSON is promised. */
function report({ finishable, explored, faults, noticing, hands, notes, proved }: Proof): object {
  return {
    finishable,
    proved,
    closed: explored.closed,
    statesExplored: explored.states,
    transitions: explored.transitions,
    witnessFailures: explored.witnessFailures,
    longestWitness: explored.longestWitness,
    byIsolation: explored.byIsolation,
    faults,
    sensitivity: noticing,
    hands: Object.fromEntries(Object.entries(hands).map(([name, { verdict }]) => [name, verdict])),
    notes: notes.map((note) => wordNote(note, englishNotes)),
  };
}

function wordProof({ finishable, explored, noticing, hands, notes, proved }: Proof): string {
  const { closed, states, transitions, witnessFailures, longestWitness, byIsolation } = explored;
  return [
    proved ? 'Proved.' : 'Not proved.',
    `  A steady crew ${finishable ? 'finishes and passes' : 'does not pass'}, in ${clock(hands.steady.simulatedS)}.`,
    `  ${states} states, ${transitions} ways between them, ${closed ? 'all looked at' : 'not all looked at'}; ${witnessFailures} without a way to safety.`,
    `  Longest way to safety ${longestWitness} moves; from ${byIsolation} states only the valves of the main are left.`,
    ...(noticing === null ? [] : [wordNoticing(noticing)]),
    ...Object.entries(hands).map(
      ([name, { verdict, score }]) => `  ${name}: ${english.verdicts[verdict]}, ${score.toFixed(1)}`,
    ),
    ...notes.map((note) => {
      const { field, says, suggests } = wordNote(note, englishNotes);
      return `  ${field}: ${says} ${suggests}`;
    }),
    say('caution.trains'),
  ].join('\n');
}

function wordNoticing({ tried, of, noticed, harmless, punished, share }: Noticing): string {
  const percent = (100 * share).toFixed(1);
  return `  ${tried} of ${of} slips played: ${noticed} of ${tried - harmless} that matter noticed (${percent} %), ${punished} of ${harmless} harmless ones punished.`;
}
