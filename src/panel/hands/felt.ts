import type { Fact } from '../../core/rig/index.ts';

type FactOf<K extends Fact['fact']> = Extract<Fact, { fact: K }>;

const isFact = <K extends Fact['fact']>(fact: Fact, kind: K): fact is FactOf<K> => fact.fact === kind;

/** The latest fact of a kind that also answers to a condition, or null. */
export function lastFact<K extends Fact['fact']>(
  facts: readonly Fact[],
  kind: K,
  also: (fact: FactOf<K>) => boolean = () => true,
): FactOf<K> | null {
  for (let i = facts.length - 1; i >= 0; i -= 1) {
    const fact = facts[i];
    if (isFact(fact, kind) && also(fact)) return fact;
  }
  return null;
}
