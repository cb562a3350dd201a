import type { Fact } from '../core/rig/index.ts';
import type { Refusal } from '../session/index.ts';
import type { Voice } from '../text/index.ts';
import { tell } from './words/index.ts';

/** What of the facts is told: that a hand did a thing need not be, where what came of it is. */
export function toldOf(facts: readonly Fact[]): readonly Fact[] {
  return facts.filter((fact, i) => {
    const next: Fact | undefined = facts[i + 1];
    return fact.fact !== 'done' || next === undefined || next.fact === 'done' || next.atS !== fact.atS;
  });
}

/** Out of sight, without a sound or a pull of its own: a crew does not know of it until it looks. */
const unseen: ReadonlySet<Fact['fact']> = new Set([
  'gas.flammable',
  'stopper.dropped',
  'stopper.pushed',
  'stopper.slipped',
]);

/** What a crew would have noticed of the facts. */
export function noticed(facts: readonly Fact[]): readonly Fact[] {
  return facts.filter((fact) => !unseen.has(fact.fact));
}

/** The refusal in words. */
export function refusalSaid(refusal: Refusal, voice: Voice): string {
  return tell('log.hindered', { why: voice.hindrance(refusal.hindrance) });
}

/** The last thing that happened, or that could not be done, in one sentence. */
export function lastSaid(facts: readonly Fact[], refusal: Refusal | null, voice: Voice): string {
  if (refusal !== null) return refusalSaid(refusal, voice);
  const last = facts.at(-1);
  return last === undefined ? '' : voice.fact(last);
}
