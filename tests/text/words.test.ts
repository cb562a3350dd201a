import { describe, expect, it } from 'vitest';
import { pieceKinds } from '../../src/core/catalogue/index.ts';
import {
  actionSchema,
  cleanPlaces,
  detectorPlaces,
  gauges,
  hindrances,
  holdPointIds,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
  recordFields,
  referReasons,
  siteTasks,
} from '../../src/core/rig/index.ts';
import { evidenceItemIds, safeStateIds, stages } from '../../src/core/procedure/index.ts';
import {
  abnormalConditionIds,
  findingIds,
  type Finding,
  type FindingId,
} from '../../src/core/judge/index.ts';
import { headings } from '../../src/core/scenario/index.ts';
import { capital, english, say, voiceOf, type UnitSystem } from '../../src/text/index.ts';
import { filled } from '../../src/text/sentence.ts';
import { exercise } from '../scenario/exercise.ts';
import { actionSamples, factSamples } from './samples.ts';

const { job } = exercise();
const systems: readonly UnitSystem[] = ['us', 'si'];
const sentence = /^[A-Z0-9“].*[.:!]$|: .+$/s;
const unworded = /undefined|NaN|\[object|Infinity|null|[a-z]{2}[A-Z]/;

describe('every word is there', () => {
  it.each([
    ['pieces', pieceKinds],
    ['siteTasks', siteTasks],
    ['lookPlaces', lookPlaces],
    ['leakPlaces', leakPlaces],
    ['cleanPlaces', cleanPlaces],
    ['markPlaces', markPlaces],
    ['measures', measures],
    ['gauges', gauges],
    ['detectorPlaces', detectorPlaces],
    ['recordFields', recordFields],
    ['referReasons', referReasons],
    ['hindrances', hindrances],
    ['stages', stages],
    ['safeStates', safeStateIds],
    ['holdPoints', holdPointIds],
    ['headings', headings],
  ] as const)('of all %s, and none too many', (group, ids) => {
    expect(new Set(Object.keys(english[group]))).toEqual(new Set(ids));
    const texts = Object.values(english[group] as Record<string, unknown>).map((w) => JSON.stringify(w));
    expect(new Set(texts).size).toBe(texts.length);
  });

  it('of every action a hand can do, as a button and as a thing done, in both systems of units', () => {
    const kinds = actionSchema.options.map((option) => option.entries.kind.literal);
    expect(new Set(actionSamples.map((a) => a.kind))).toEqual(new Set(kinds));
    for (const system of systems) {
      const voice = voiceOf(job, system);
      for (const action of actionSamples) {
        const button = voice.button(action);
        expect(button).toMatch(/^[A-Z]/);
        expect(button).not.toMatch(/\.$/);
        expect(voice.done(action)).toMatch(sentence);
        expect(`${button} ${voice.done(action)}`).not.toMatch(unworded);
      }
    }
  });

  it('of every fact that can happen, one sentence each, in both systems of units', () => {
    expect(new Set(factSamples.map((f) => f.fact))).toEqual(new Set(Object.keys(english.facts)));
    for (const system of systems) {
      const voice = voiceOf(job, system);
      for (const fact of factSamples) {
        const text = voice.fact(fact);
        expect(text).toMatch(sentence);
        expect(text).not.toMatch(unworded);
      }
    }
  });

  it('tells no truth that a crew could not see when it words a reading', () => {
    const voice = voiceOf(job, 'si');
    const read = factSamples.filter((f) => f.fact === 'gauge.read')[0];
    const { fact } = voice;
    expect(fact({ ...read, trueGaugePa: 1 })).toBe(fact(read));
    const smelt = factSamples.filter((f) => f.fact === 'detector.read')[0];
    expect(fact({ ...smelt, trueLelShare: 1 })).toBe(fact(smelt));
    const kept = factSamples.filter((f) => f.fact === 'keeper.turned')[0];
    expect(fact({ ...kept, gapM: 1 })).toBe(fact(kept));
    const left = factSamples.filter((f) => f.fact === 'stopper.left')[0];
    expect(fact({ ...left, belowPortM: 1, torqueNm: 9 })).toBe(fact(left));
  });
});

describe('pieces by name', () => {
  it('are called by kind and stamp, and told apart by number where they are alike', () => {
    const voice = voiceOf(job);
    expect(voice.piece('seatRing-114')).toBe('Seat ring 1-1/4');
    expect(voice.piece('chain-b')).toBe('Chain no. 2');
    expect(voice.piece('closingPlug-1-spare')).toBe('Closing plug 1 no. 2');
    expect(voice.piece('saddle')).toBe('Saddle');
    const names = job.kit.map((k) => voice.piece(k.id));
    expect(new Set(names).size).toBe(names.length);
  });

  it('are called by their stamp even where the stamp lies', () => {
    const lying = exercise();
    const kit = lying.job.kit.map((k) => (k.id === 'seatRing-1' ? { ...k, trueSize: '3/4' as const } : k));
    expect(voiceOf({ ...lying.job, kit }).piece('seatRing-1')).toBe('Seat ring 1');
  });
});

describe('plain sentences', () => {
  it('fill their slots and refuse to leave one empty', () => {
    expect(say('run.altered', { number: 7 })).toContain('action 7');
    expect(() => say('run.altered')).toThrow('number');
    expect(filled('{a} and {b}', { a: 1, b: 'two' })).toBe('1 and two');
    expect(capital('seat ring')).toBe('Seat ring');
  });

  it('say that a simulator trains and that the written procedure comes first', () => {
    expect(say('caution.trains')).toMatch(/does not qualify/);
    expect(say('caution.first')).toMatch(/written procedure.*local codes.*licensed practice/);
  });
});

describe('what the judge finds', () => {
  const found = (id: FindingId, more: Partial<Finding> = {}): Finding => ({
    id,
    heading: findingIds[id].heading,
    atS: 61,
    points: 1,
    critical: false,
    holdPoint: null,
    numbers: new Proxy({}, { get: () => 3 }),
    items: [],
    ...more,
  });
  const ids = Object.keys(findingIds) as FindingId[];
  const voices = systems.map((system) => voiceOf(job, system));

  it('is worded for every finding and none too many: what happened, why it matters, what to do', () => {
    expect(new Set(Object.keys(english.findings))).toEqual(new Set(ids));
    const titles = ids.map((id) => english.findings[id].title);
    expect(new Set(titles).size).toBe(titles.length);
    for (const voice of voices) {
      for (const id of ids) {
        const text = voice.finding(found(id, { holdPoint: id.startsWith('hold') ? 'H4' : null }));
        expect(text.title).toMatch(/^[A-Z].*[a-z]$/);
        for (const part of [text.happened, text.why, text.next]) expect(part).toMatch(/^[A-Z0-9].*\.$/);
        expect(Object.values(text).join(' ')).not.toMatch(unworded);
      }
    }
  });

  it('names the hold point and everything that was wanting', () => {
    const text = voices[0].finding(found('holdFalse', { holdPoint: 'H2', items: ['held', 'fluid.seat'] }));
    expect(text.happened).toBe(
      'H2, first chamber proved, was signed. Wanting: the full hold and leak fluid on the saddle’s seat.',
    );
  });

  it('names pieces as the kit has them and numbers in the units asked for', () => {
    const text = (system: UnitSystem) =>
      voiceOf(job, system).finding(
        found('openedUnderPressure', {
          items: ['rodBarrel'],
          numbers: { pressureGaugePa: 241316.5, thrustN: 1100 },
        }),
      ).happened;
    expect(text('us')).toBe('Took off the rod barrel with 35.0 psig behind it, pushing with 247 lbf.');
    expect(text('si')).toBe('Took off the rod barrel with 241 kPa behind it, pushing with 1100 N.');
  });

  it('has words for every requirement of every hold point and every abnormal condition', () => {
    for (const id of holdPointIds) {
      expect(new Set(Object.keys(english.evidenceItems[id]))).toEqual(new Set(evidenceItemIds[id]));
    }
    expect(new Set(Object.keys(english.conditions))).toEqual(new Set(abnormalConditionIds));
  });
});
