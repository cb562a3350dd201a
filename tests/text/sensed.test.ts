import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Fact } from '../../src/core/rig/index.ts';
import { noticed } from '../../src/panel/told.ts';
import { fetchWords, languages, speakBy, voiceOf, words } from '../../src/text/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { factSamples } from './samples.ts';

type FactKind = Fact['fact'];
type FieldOf<K extends FactKind> = Exclude<keyof Extract<Fact, { fact: K }>, 'fact' | 'atS'>;

/**
 * Of each kind of fact what a crew has no way to know as the thing happens: true values beside what was read, figures
 * of gas and force that no dial shows, and what the exercise thinks of it. Ours, by what stands on the rig to look at.
 */
const hidden: { readonly [K in FactKind]: readonly FieldOf<K>[] } = {
  done: [],
  'site.done': [],
  'detector.bumped': [],
  'detector.read': ['trueLelShare'],
  'gauge.zeroed': [],
  'gauge.read': ['trueGaugePa'],
  looked: [],
  listened: ['levelDb'],
  measured: ['trueM'],
  cleaned: [],
  oiled: [],
  'piece.cleaned': [],
  'bleed.cleared': [],
  marked: [],
  'leak.looked': ['gasMolPerS', 'pressureGaugePa'],
  'piece.inspected': [],
  'piece.rejected': ['doubtful'],
  'piece.placed': [],
  'piece.removed': ['pressureGaugePa', 'thrustN', 'gasMol'],
  'joint.turned': [],
  'chain.tapped': ['settledM'],
  'tensioner.turned': ['legForceN'],
  'chain.released': ['forceN', 'chamberGaugePa'],
  'valve.turned': ['differenceGaugePa'],
  'vent.turned': ['aboveGaugePa'],
  pumped: ['headGaugePa'],
  'bleed.turned': ['aboveGaugePa', 'levelDb'],
  'bleed.quiet': ['aboveGaugePa'],
  'rod.moved': [],
  'rod.engaged': [],
  'rod.turned': [],
  'rod.thrown': ['thrustN', 'pressureGaugePa', 'energyJ'],
  'rod.sank': [],
  'load.dropped': [],
  'socket.stuck': [],
  'rod.still': ['netN'],
  'plug.turned': ['turnsBack'],
  'plug.free': ['differenceGaugePa', 'thrustN'],
  'tee.turned': ['heldBack'],
  'tee.free': ['thrustN'],
  'tee.strained': [],
  'keeper.turned': ['gapM', 'heldBack'],
  'stopper.squeezed': [],
  'stopper.torn': [],
  'stopper.left': ['belowPortM', 'torqueNm'],
  'stopper.slipped': ['byM', 'thrustN', 'holdsN'],
  'stopper.pushed': ['byM', 'belowPortM'],
  'stopper.dropped': ['into'],
  'closing.turned': [],
  'renewal.turned': ['trueOffHeadingRad', 'backward'],
  'newPlug.turned': [],
  'stopper.drawn': ['differenceGaugePa', 'thrustN'],
  'testSet.joined': [],
  'testSet.pumped': ['gaugePa', 'onStopper', 'thrustN', 'holdsN'],
  'testSet.vented': ['gaugePa'],
  'temperature.read': ['trueK'],
  'riser.turned': ['gaugePa'],
  'riser.read': ['trueGasShare'],
  'collarBolt.turned': [],
  'branch.cut': ['pressureGaugePa', 'bonded'],
  'bond.sparked': [],
  'gaugeRing.tried': ['sweptM'],
  'service.purged': [],
  'record.written': [],
  signed: [],
  withdrawn: [],
  'gas.alarm': ['lelShare'],
  'gas.flammable': ['lelShare', 'nearReachM'],
  'gas.ignited': ['lelShare'],
  'relief.lifted': ['headGaugePa'],
  'relief.shut': ['headGaugePa'],
  'blow.began': ['kgPerS'],
  'blow.ended': ['lostKg'],
  'saddle.lifted': ['chamberGaugePa', 'forceN'],
  referred: [],
  ended: [],
};

/** The same fact with another truth behind it: figures a fifth larger, the exercise of another mind, gone elsewhere. */
function withAnotherTruth(fact: Fact): Fact {
  const fields = Object.entries(fact).map(([field, value]) => {
    if (!(hidden[fact.fact] as readonly string[]).includes(field)) return [field, value] as const;
    const other =
      typeof value === 'number' ? value * 1.2 : typeof value === 'boolean' ? !value : `not ${String(value)}`;
    return [field, other] as const;
  });
  return Object.fromEntries(fields) as unknown as Fact;
}

const { job } = exercise();
const told = (fact: Fact, system: 'us' | 'si'): string | null =>
  noticed([fact]).length === 0 ? null : voiceOf(job, system).sensed(fact);

describe.each(languages)('what a crew under assessment is told, in %s', (language) => {
  beforeAll(async () => {
    await fetchWords(language);
    speakBy(() => language);
  });
  afterAll(() => speakBy(() => 'en'));

  it('is the same whatever is true behind it, for every kind of fact', () => {
    expect(new Set(factSamples.map(({ fact }) => fact))).toEqual(new Set(Object.keys(hidden)));
    for (const fact of factSamples)
      for (const system of ['us', 'si'] as const)
        expect(told(withAnotherTruth(fact), system), fact.fact).toBe(told(fact, system));
  });

  it('has words of its own only where practice says more', () => {
    const voice = voiceOf(job, 'si');
    const more = (kind: string): boolean =>
      factSamples.some((fact) => fact.fact === kind && voice.fact(fact) !== voice.sensed(fact));
    expect(Object.keys(words().sensed).filter((kind) => !more(kind))).toEqual([]);
  });

  it('would be caught telling what only the model knows, as practice does', () => {
    const voice = voiceOf(job, 'si');
    const changing = factSamples.filter((fact) => voice.fact(withAnotherTruth(fact)) !== voice.fact(fact));
    expect(new Set(changing.map(({ fact }) => fact)).size).toBeGreaterThan(20);
  });

  it('is a sentence', () => {
    for (const fact of noticed(factSamples)) {
      const said = voiceOf(job, 'si').sensed(fact);
      expect(said).toMatch(/^[\p{Lu}\d].*[.!:\p{L}\d]$/su);
      expect(said).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  it('leaves out what happens out of sight', () => {
    const unseen = ['stopper.slipped', 'stopper.pushed', 'stopper.dropped', 'gas.flammable'];
    const kept = noticed(factSamples).map(({ fact }) => fact);
    expect(unseen.filter((kind) => kept.includes(kind as FactKind))).toEqual([]);
    expect(kept).toContain('gas.alarm');
  });
});
