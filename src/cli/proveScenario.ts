import type { Command } from 'commander';
import { prove, type Proof } from '../core/prove/index.ts';
import { clock, english, englishNotes, say, wordNote } from '../text/index.ts';
import type { CommandIo } from './io.ts';
import { readScenario } from './readInput.ts';

/** Adds `prove`: is an exercise finishable, without dead ends, noticing and fair? Judged bad with a grave note. */
export function addProve(program: Command, io: CommandIo, ends: (good: boolean) => void): void {
  program
    .command('prove')
    .description('show that an exercise can be finished, has no dead end, notices slips and is fair')
    .argument('<scenario>', 'folder or file of the exercise')
    .option('--json', 'one JSON document on standard output')
    .action((place: string, options: { json?: boolean }) => {
      const scenario = readScenario(place);
      io.err(`Proving ${scenario.id} …`);
      const proof = prove(scenario, (part, share) => {
        if (part === 'hands' || share === 1) io.err(`  ${part} ${Math.round(share * 100)} %`);
        return true;
      });
      io.out(options.json ? JSON.stringify(report(proof)) : wordProof(proof));
      ends(proof.proved);
    });
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

function wordProof({ finishable, explored, hands, notes, proved }: Proof): string {
  const { closed, states, transitions, witnessFailures, longestWitness, byIsolation } = explored;
  return [
    proved ? 'Proved.' : 'Not proved.',
    `  A steady crew ${finishable ? 'finishes and passes' : 'does not pass'}, in ${clock(hands.steady.simulatedS)}.`,
    `  ${states} states, ${transitions} ways between them, ${closed ? 'all looked at' : 'not all looked at'}; ${witnessFailures} without a way to safety.`,
    `  Longest way to safety ${longestWitness} moves; from ${byIsolation} states only the valves of the main are left.`,
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
