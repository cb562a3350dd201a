import type { Scenario } from '../scenario/index.ts';
import { allHands } from '../hands/index.ts';
import { conditionsMet } from '../judge/index.ts';
import { noticingOf, withNoticing } from './noticing.ts';
import { faultNotes, meetFaults } from './meetFaults.ts';
import { explore, notExplored } from './abstract/index.ts';
import { finishableNotes, goodWorkNotes, holdPointNotes, limitNotes, weightNotes } from './fair.ts';
import { searchNotes } from './searchNotes.ts';
import { resultOf, tryHand, type Tried } from './tryHands.ts';
import type { GoOn, HandResult, Note, Proof } from './types.ts';

/** States a search looks at before it gives up, if nothing else is said; the base job has some 119,000. */
const MOST_STATES = 1_000_000;
/** States of the base job, for telling how far a search has come. */
const USUAL_STATES = 120_000;

/** Deviations a proof plays, spread evenly over all there are; each costs about a tenth of a second. */
export const MOST_DEVIATIONS = 250;

/**
 * Proves an exercise before class: a steady crew finishes it, no state that hands can bring it into is without a way to
 * safety, the hands that should fail do, slips are noticed, and nothing in its figures is unfair. Where a steady crew does
 * not pass, that is to be mended first: neither dead ends nor slips are looked for. Pure; `goOn` is told of progress.
 */
export function prove(
  scenario: Scenario,
  goOn: GoOn = () => true,
  mostStates = MOST_STATES,
  mostDeviations = MOST_DEVIATIONS,
): Proof {
  const tried: Record<string, Tried> = {};
  const hands: Record<string, HandResult> = {};
  const names = Object.keys(allHands);
  for (let i = 0; i < names.length && (goOn('hands', i / names.length) || i === 0); i += 1) {
    tried[names[i]] = tryHand(scenario, allHands[names[i]]);
    hands[names[i]] = resultOf(tried[names[i]]);
  }
  const { steady } = tried;
  const finishable = hands.steady.verdict === 'pass';
  const explored = finishable
    ? explore(scenario, {
        most: mostStates,
        goOn: (states) => goOn('search', Math.min(1, states / USUAL_STATES)),
      })
    : notExplored;
  const faults = goOn('faults', 0) ? meetFaults(scenario) : [];
  const notes: readonly Note[] = [
    ...finishableNotes(scenario, steady),
    ...(finishable ? searchNotes(scenario, explored) : []),
    ...goodWorkNotes(steady),
    ...holdPointNotes(scenario, steady),
    ...weightNotes(scenario, conditionsMet(steady.run).length),
    ...limitNotes(scenario, hands),
    ...faultNotes(faults),
  ];
  const proved = notes.every((one) => !one.grave);
  const proof: Proof = { finishable, explored, faults, noticing: null, hands, notes, proved };
  return finishable && mostDeviations > 0
    ? withNoticing(proof, noticingOf(scenario, goOn, mostDeviations))
    : proof;
}
