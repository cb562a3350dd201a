import type { Action, Fact, ReferReason, Sight, SiteTask } from '../../rig/index.ts';
import { latest } from '../recall.ts';
import { lastS, offer, type DueView, type Offer } from './view.ts';

type TroubleKind = NonNullable<Sight['signs']>[number];

/** What is found amiss beyond the pieces asks for: something to be done at once, or the work stopped for a reason. */
type Answer = SiteTask | 'leadHose' | { readonly stop: ReferReason };

const answers: Readonly<Partial<Record<TroubleKind, Answer>>> = {
  workerDown: 'retrieveByLine',
  wrongService: { stop: 'wrongService' },
  strayVolts: { stop: 'strayVolts' },
  liquid: { stop: 'liquidInMain' },
  insert: { stop: 'insertFound' },
  ignition: 'ignitionCleared',
  public: 'clearPublic',
  stillAir: 'ventilate',
  water: 'pumpOutWater',
  springs: 'supportPipe',
  secondHouse: 'callGasControl',
  curbPassing: 'callGasControl',
  unknownBranch: 'callGasControl',
  noOdour: 'callGasControl',
  hoseKinked: 'leadHose',
  hoseDrifted: 'leadHose',
};

/** What was found and not yet answered since, people first. */
export function* answering(view: DueView): Generator<Offer> {
  for (const [what, answer] of Object.entries(answers) as [TroubleKind, Answer][]) {
    const found = view.facts.findLast((fact) => signsIn(fact).includes(what));
    if (found === undefined || doneSince(view, answer, found.atS)) continue;
    yield offer(typeof answer === 'object' ? 'referBack' : 'answerFound', actionOf(answer));
  }
}

/** A look round the hole and along the hose after each signature: what has changed there comes to light before work goes on. */
export function* lookingRound(view: DueView): Generator<Offer> {
  if (view.procedure.holds.H1 === 'open') return;
  const sinceS = lastS(view, 'signed');
  for (const at of ['around', 'hose'] as const) {
    const looked = latest(view.facts, 'looked', (f) => f.at === at && f.atS >= sinceS);
    if (!looked) yield offer('lookRound', { kind: 'look', at });
  }
}

function signsIn(fact: Fact): readonly TroubleKind[] {
  switch (fact.fact) {
    case 'looked':
      return fact.saw.signs ?? [];
    case 'site.done':
    case 'bleed.turned':
    case 'branch.cut':
      return fact.found ?? [];
    default:
      return [];
  }
}

function actionOf(answer: Answer): Action {
  if (typeof answer === 'object') return { kind: 'refer', reason: answer.stop };
  return answer === 'leadHose' ? { kind: 'hose.lead', outlet: 'away' } : { kind: 'site.do', task: answer };
}

/** Whether it was answered after it was found; finding it in the doing of the very task does not count. */
function doneSince({ facts }: DueView, answer: Answer, foundS: number): boolean {
  return facts.some((fact) => {
    if (fact.fact !== 'done' || fact.atS < foundS) return false;
    const { action } = fact;
    if (answer === 'leadHose') return action.kind === 'hose.lead';
    return action.kind === 'site.do' && action.task === answer && fact.atS > foundS;
  });
}
