import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findingIds, type Finding, type FindingId } from '../../src/core/judge/index.ts';
import { drive, steady } from '../../src/core/hands/index.ts';
import { read, type RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { benchEnglish } from '../../src/bench/words/en/index.ts';
import { benchSpanish } from '../../src/bench/words/es/index.ts';
import { deskEnglish } from '../../src/desk/words/en/index.ts';
import { deskSpanish } from '../../src/desk/words/es/index.ts';
import { english as englishLabels } from '../../src/panel/words/en/index.ts';
import { exerciseInSpanish, spanish as spanishLabels } from '../../src/panel/words/es/index.ts';
import {
  decimals,
  duration,
  english,
  fetchWords,
  finePercent,
  speakBy,
  turnsOf,
  twin,
  unitsOf,
  voiceOf,
} from '../../src/text/index.ts';
import { tradeWords } from '../../src/text/messages/es/glossary.ts';
import { spanish } from '../../src/text/messages/es/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { shippedNames, shippedText } from '../scenarios/shipped.ts';
import { actionSamples, factSamples } from './samples.ts';

/** Written the same in both languages: names, signs, units and each language's own name. */
const same = new Set([
  'Stillmain',
  'NPS {n}',
  '{n}×',
  '{n} %',
  '{n} mm',
  '{n}°',
  '10 s',
  '1 min',
  '5 min',
  '{piece}, {at}.',
  'SI',
  'no',
  'English',
  'Español',
]);
/** Words that English has and Spanish has not; `come` and the like, which both have, are left out. */
const englishWord =
  /(?<![\p{L}-])(the|of|and|is|are|was|were|with|not|its|it|from|off|have|been|this|that|what|which|by|on|under|down|up|gas alarm|valve|plug|tee|rod|stopper|chain|saddle|hole|leak|bleed)(?![\p{L}-])/iu;

function* pairs(one: unknown, other: unknown, path = ''): Generator<[string, string, unknown]> {
  if (typeof one === 'string') yield [path, one, other];
  if (typeof one !== 'object' || one === null) return;
  const theirs = new Map(Object.entries(typeof other === 'object' && other !== null ? other : {}));
  for (const [key, value] of Object.entries(one)) yield* pairs(value, theirs.get(key), `${path}/${key}`);
}
const catalogues = [
  [englishLabels, spanishLabels, 'labels'],
  [deskEnglish, deskSpanish, 'desk'],
  [benchEnglish, benchSpanish, 'bench'],
  [english, spanish, 'text'],
] as const;
const leaves = catalogues.flatMap(([one, other, name]) => [...pairs(one, other, name)]);
const slots = (text: string): string[] => [...text.matchAll(/\{\w+\}/g)].map(String).sort();

beforeAll(async () => {
  await fetchWords('es');
  speakBy(() => 'es');
});
afterAll(() => speakBy(() => 'en'));

describe('the Spanish catalogue', () => {
  it('has every plain sentence, none left in English and none without its slots', () => {
    expect(leaves.length).toBeGreaterThan(700);
    for (const [path, one, other] of leaves) {
      if (typeof other !== 'string') throw new Error(`${path} is missing`);
      if (!same.has(one)) expect(other, path).not.toBe(one);
      expect(other.trim(), path).not.toBe('');
      expect(slots(other), path).toEqual(slots(one));
      if (!same.has(other)) expect(other.replace(/\{\w+\}/g, ''), path).not.toMatch(englishWord);
    }
  });

  it('has no sentence that English has not', () => {
    const ours = new Set(leaves.map(([path]) => path));
    const theirs = catalogues.flatMap(([one, other, name]) => [...pairs(other, one, name)]);
    expect(theirs.filter(([path]) => !ours.has(path))).toEqual([]);
  });

  it('says each word of the trade in one way', () => {
    for (const [ours, theirs] of tradeWords) {
      const said = leaves.filter(([, one]) => ours.test(one));
      expect(said.length, String(ours)).toBeGreaterThan(0);
      expect(
        said.filter(([, , other]) => typeof other !== 'string' || !theirs.test(other)),
        String(ours),
      ).toEqual([]);
    }
  });

  it('opens and ends sentences as English does', () => {
    for (const [path, one, other] of leaves) {
      if (typeof other !== 'string') continue;
      if (one.endsWith('.') !== other.endsWith('.')) throw new Error(`${path}: ${other}`);
      if (one.endsWith('?')) expect(other, path).toMatch(/^¿.*\?|¿/);
    }
  });

  it('words every action and every fact, in both systems of units', () => {
    const { job } = exercise();
    for (const system of ['us', 'si'] as const) {
      const voice = voiceOf(job, system);
      const said = [
        ...actionSamples.flatMap((action) => [voice.button(action), voice.done(action)]),
        ...factSamples.map((fact) => voice.fact(fact)),
      ];
      for (const text of said) {
        expect(text).toMatch(/^[\p{Lu}\d¿]/u);
        expect(text).not.toMatch(englishWord);
        expect(text).not.toMatch(/undefined|NaN|null|\[object|(?<!\p{L})(de|a) el(?!\p{L})|\d\.\d/u);
      }
    }
  });

  it('words every finding', () => {
    const voice = voiceOf(exercise().job, 'si');
    for (const id of Object.keys(findingIds) as FindingId[]) {
      const finding: Finding = {
        id,
        heading: findingIds[id].heading,
        atS: 61,
        points: 1,
        critical: false,
        holdPoint: id.startsWith('hold') ? 'H4' : null,
        numbers: new Proxy({}, { get: () => 3.5 }),
        items: [],
      };
      const { title, happened, why, next } = voice.finding(finding);
      for (const text of [title, happened, why, next]) {
        expect(text, id).toMatch(/^[\p{Lu}\d]/u);
        expect(text, id).not.toMatch(englishWord);
        expect(text, id).not.toMatch(/undefined|NaN|(?<!\p{L})(de|a) el(?!\p{L})/u);
      }
    }
  });

  it('tells the whole twin of a whole job', () => {
    const moments: RunState[] = [];
    drive(exercise(), steady, (run) => moments.push(run));
    const seen = new Set(
      moments
        .filter((_, i) => i % 9 === 0)
        .flatMap((run) =>
          twin(run, read(run), 'practice', 'si').flatMap((part) => [part.heading, ...part.lines]),
        ),
    );
    expect(seen.size).toBeGreaterThan(80);
    for (const line of seen) {
      expect(line).not.toMatch(englishWord);
      expect(line).not.toMatch(/undefined|NaN|null|\{|\}|\d\.\d/);
    }
  });

  it('has every shipped exercise, line for line', () => {
    const shipped = shippedNames.map((name) => JSON.parse(shippedText(name)) as Scenario);
    expect(shipped.length).toBeGreaterThan(5);
    for (const { id, title, brief, workOrder } of shipped) {
      const { operator, address, says } = workOrder;
      const told = exerciseInSpanish({ title, operator, address, says });
      expect(told.says).toHaveLength(says.length);
      const toldBrief = readFileSync(`scenarios/${id}/brief.es.txt`, 'utf8');
      const pairs = [title, brief, operator, address, ...says].map((one, i) => [
        one,
        [told.title, toldBrief, told.operator, told.address, ...told.says][i],
      ]);
      for (const [one, other] of pairs) {
        expect(other, id).not.toBe(one);
        expect(other.replace(/^Zona .*/, ''), id).not.toMatch(englishWord);
        if (one !== brief) expect(other.match(/\d+/g), other).toEqual(one.match(/\d+/g));
      }
    }
  });
});

describe('figures in Spanish', () => {
  it('have a decimal comma, in both systems of units', () => {
    expect(decimals(3.25, 2)).toBe('3,25');
    expect(decimals(-0.001, 1)).toBe('0,0');
    expect(unitsOf('us').pressure(241316.5)).toBe('35,0 psig');
    expect(unitsOf('si').fingerTorque(2.26)).toBe('2,3 N·m');
    expect(finePercent(0.2085)).toBe('20,8 %');
    expect(duration(0.7)).toBe('0,7 s');
  });

  it('say turns as a fitter does', () => {
    expect([1 / 12, 1, 1.25, 2, 0.07, 0].map(turnsOf)).toEqual([
      '1/12 vuelta',
      '1 vuelta',
      '1 1/4 vueltas',
      '2 vueltas',
      '0,07 vuelta',
      'ni una vuelta',
    ]);
  });
});
