import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keyOf, type Decision } from '../../src/core/review/index.ts';
import { fetchWords, report, speakBy } from '../../src/text/index.ts';
import type { ReportInput, ReportOptions } from '../../src/text/report/index.ts';
import { english } from '../../src/text/report/words/en.ts';
import { spanish } from '../../src/text/report/words/es.ts';
import { english as reviewEnglish } from '../../src/text/review/words/en.ts';
import { spanish as reviewSpanish } from '../../src/text/review/words/es.ts';
import { decided, hastyRun } from '../review/runs.ts';

const { record, assessment, integrity, firstBad, fileDigest } = hastyRun;
if (record === null || integrity === 'damaged') throw new Error('no run');
const [first] = assessment?.findings ?? [];
const decision: Decision = {
  ...decided({
    decision: 'notYet',
    validity: null,
    opinion: { setAside: [{ finding: keyOf(first), reason: 'Seen on <camera> 2' }], added: [] },
    notes: [{ atS: 61, says: 'Asked for help & got it.' }],
    abnormal: [{ condition: 'plugPassing', seen: true, reacted: false, says: '' }],
  }),
  signature: { algorithm: 'Ed25519', publicKey: 'a'.repeat(64), value: 'b'.repeat(128) },
};
const input: ReportInput = {
  record,
  assessment,
  integrity,
  firstBad,
  fileDigest,
  keyOf,
  decision,
  signature: 'good',
};
const page = (changes: Partial<ReportInput> = {}, options: ReportOptions = {}) =>
  report({ ...input, ...changes }, options);
const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
/** What a reader sees of a page: its body without tags. */
const textOf = (html: string): string =>
  html
    .slice(html.indexOf('<body>'))
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(\w+|#39);/g, (_, name: string) => signs[name])
    .replace(/\s+/g, ' ')
    .replace(/ ([.,;:])/g, '$1');

const leaves = (value: unknown, path = ''): [string, string][] =>
  typeof value === 'string'
    ? [[path, value]]
    : Object.entries(value as object).flatMap(([key, inner]) => leaves(inner, `${path}/${key}`));

describe('the report of a run', () => {
  it('needs no other file and no script', () => {
    const html = report(input);
    expect(html).not.toMatch(/<script|<link|<img|@import|url\(/i);
    expect(html).not.toMatch(/https?:/);
  });

  it('says who, what, how it was judged, what was decided, and how to verify it', () => {
    const text = textOf(page());
    for (const part of [
      'Trainee 002',
      'Failed: critical finding',
      'trains; it does not qualify',
      'not yet demonstrated',
      'Abandon a service tee under pressure',
      'Assessor A, yard assessor',
      'simulation',
      'a top plug that passes',
      fileDigest,
      'stillmain judge run.json',
      'Set aside by the assessor: Seen on <camera> 2',
      'Asked for help & got it.',
    ])
      expect(text).toContain(part);
    expect(text).not.toMatch(/undefined|NaN|null|\[object|\{\w+\}/);
  });

  it('tells quantities in both systems of units, the one asked for first', () => {
    expect(textOf(page())).toMatch(/psig.{0,120}\(.{0,120}kPa/);
    expect(textOf(page({}, { system: 'si' }))).toMatch(/kPa.{0,120}\(.{0,120}psig/);
  });

  it('leaves out every mark where asked, and keeps the verdict', () => {
    const shown = textOf(page());
    const hidden = textOf(page({}, { hideMarks: true }));
    expect(shown).toMatch(/\d points/);
    expect(hidden).not.toMatch(/\d points|Score|of 40/);
    expect(hidden).toContain('Failed: critical finding');
  });

  it('is refused as evidence on its face when the file was altered, or the signature is bad', () => {
    const bad = { why: 'chainBroken', where: 'entries[3]', entry: 3, byte: null, says: '' } as const;
    const text = textOf(page({ integrity: 'altered', firstBad: bad, signature: 'bad' }));
    expect(text).toContain('First bad place: action 4');
    expect(text).toContain('refused as evidence');
    expect(text).toContain('BAD');
  });

  it('of a run that was not judged shows what the file says of itself', () => {
    const said = { verdict: 'pass', ending: 'complete', score: 91 } as const;
    const text = textOf(
      page({ integrity: 'differs', assessment: null, decision: null, record: { ...record, said } }),
    );
    expect(text).toContain('not judged again: Pass, score 91.0');
    expect(text).toContain('No decision has been made');
  });

  describe('in Spanish', () => {
    beforeAll(async () => {
      await fetchWords('es');
      speakBy(() => 'es');
    });
    afterAll(() => speakBy(() => 'en'));

    it('has every sentence, with the same slots, none left in English', () => {
      const pairs = [...leaves(english), ...leaves(reviewEnglish)];
      const theirs = new Map([...leaves(spanish), ...leaves(reviewSpanish)]);
      const alike = new Set(['Gas', '{operator} · {order}', '{name}, {role}', 'no', 'marginal']);
      expect(theirs.size).toBe(new Map(pairs).size);
      for (const [path, ours] of pairs) {
        const other = theirs.get(path) ?? '';
        if (!alike.has(ours)) expect(other, path).not.toBe(ours);
        expect(other.match(/\{\w+\}/g)?.sort(), path).toEqual(ours.match(/\{\w+\}/g)?.sort());
      }
    });

    it('says what happened in Spanish and names its language', () => {
      const html = page();
      expect(html).toContain('<html lang="es">');
      expect(textOf(html)).toContain('Puntos de control');
      expect(textOf(html)).not.toMatch(/ the | of the | and the /);
    });
  });
});
