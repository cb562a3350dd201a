import type { Action, ReferReason, TroubleKind } from '../rig/index.ts';
import type { FeltFact } from './felt.ts';

/** What is amiss beyond the pieces, as this fact shows it to whoever looks, traces, bleeds or cuts. */
export function signsIn(fact: FeltFact): readonly TroubleKind[] {
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

/** What a sign asks for: something to be done at once, or the work stopped for a reason; absent where it is only known. */
export type Answer = Action | { readonly stop: ReferReason };

const done = (task: Extract<Action, { kind: 'site.do' }>['task']): Action => ({ kind: 'site.do', task });

export const answers: Readonly<Partial<Record<TroubleKind, Answer>>> = {
  water: done('pumpOutWater'),
  stillAir: done('ventilate'),
  ignition: done('ignitionCleared'),
  public: done('clearPublic'),
  workerDown: done('retrieveByLine'),
  hoseKinked: { kind: 'hose.lead', outlet: 'away' },
  hoseDrifted: { kind: 'hose.lead', outlet: 'away' },
  springs: done('supportPipe'),
  secondHouse: done('callGasControl'),
  curbPassing: done('callGasControl'),
  unknownBranch: done('callGasControl'),
  noOdour: done('callGasControl'),
  wrongService: { stop: 'wrongService' },
  strayVolts: { stop: 'strayVolts' },
  liquid: { stop: 'liquidInMain' },
  insert: { stop: 'insertFound' },
};
