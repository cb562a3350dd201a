import type { Fact } from '../rig/index.ts';

/** Columns of a fact that no crew can read, feel or see. */
const hidden = {
  trueGaugePa: true,
  trueLelShare: true,
  trueOffHeadingRad: true,
  trueGasShare: true,
  trueK: true,
  gaugePa: true,
  trueM: true,
  gasMolPerS: true,
  gasMol: true,
  legForceN: true,
  forceN: true,
  thrustN: true,
  energyJ: true,
  netN: true,
  holdsN: true,
  gapM: true,
  belowPortM: true,
  settledM: true,
  sweptM: true,
  kgPerS: true,
  lostKg: true,
  nearReachM: true,
  pressureGaugePa: true,
  aboveGaugePa: true,
  headGaugePa: true,
  chamberGaugePa: true,
  differenceGaugePa: true,
  inBore: true,
} as const;

/** Facts that happen out of sight, without a sound or a pull that a hand would know. */
const unseen: ReadonlySet<Fact['fact']> = new Set([
  'stopper.slipped',
  'stopper.pushed',
  'gas.flammable',
  'ended',
  'done',
]);

type Hidden = keyof typeof hidden;
type WithoutTruth<F> = F extends unknown ? Omit<F, Hidden> : never;

/** A fact as a crew has it: readings, what was felt, seen and heard. */
export type FeltFact = WithoutTruth<Fact>;
export type FeltOf<K extends FeltFact['fact']> = Extract<FeltFact, { readonly fact: K }>;

/** What a crew has of these facts. The truth beside each reading is taken away, not merely left unused. */
export function felt(facts: readonly Fact[]): readonly FeltFact[] {
  return facts.filter((fact) => !unseen.has(fact.fact)).map(withoutTruth);
}

function withoutTruth(fact: Fact): FeltFact {
  const kept = Object.entries(fact).filter(([name]) => !Object.hasOwn(hidden, name));
  return Object.fromEntries(kept) as unknown as FeltFact;
}
