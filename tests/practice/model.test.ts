import { mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import Card from '../../src/practice/model/Card.svelte';
import {
  apart,
  bySource,
  noChecks,
  usedOf,
  type CheckedTable,
  type Checks,
  type Row,
} from '../../src/practice/model/checks.ts';
import { readSensitivity } from '../../src/core/physics/index.ts';
import { figure, perCent } from '../../src/practice/model/figure.ts';
import english from '../../src/practice/model/words/en.json';
import spanish from '../../src/practice/model/words/es.json';
import { fill } from '../../src/practice/model/words.ts';

const table = (document: string, rows: readonly Row[]): CheckedTable => ({
  document,
  table: 'Table 1',
  obtained: 'copy',
  unit: 'in',
  rows,
});

/** Every sentence of a page's words, by its place. */
function sentences(words: unknown, place = ''): [string, string][] {
  if (typeof words === 'string') return [[place, words]];
  return Object.entries(words as object).flatMap(([key, inner]) => sentences(inner, `${place}/${key}`));
}
const slots = (text: string): string[] => [...text.matchAll(/\{\w+\}/g)].map(String).sort();

describe('what the checks left', () => {
  it('is told by document, with the most that any row used of its tolerance', () => {
    const near: Row = ['near', 1.01, 1, { share: 0.02 }];
    const design: Row = ['by design', 1.3, 1, { from: 0.2, to: 0.4 }];
    const [a, b] = bySource([table('B', [design]), table('A', [near]), table('A', [design])]);
    expect([a.document, a.count, b.document, b.used]).toEqual(['A', 2, 'B', null]);
    expect(a.used).toBeCloseTo(0.5, 9);
    expect(usedOf(['both', 10.3, 10, { share: 0.01, absolute: 0.2 }])).toBeCloseTo(1, 9);
    expect(usedOf(['exact', 50, 50, { absolute: 0 }])).toBe(0);
    expect(apart(near)).toBeCloseTo(0.01, 9);
  });

  it('is written so that it can be read at any size', () => {
    expect([figure(0), figure(1234.5678), figure(0.0004), figure(2.2e-10), figure(-0.25)]).toEqual([
      '0',
      '1235',
      '4 × 10⁻⁴',
      '2.2 × 10⁻¹⁰',
      '−0.25',
    ]);
    expect([figure(9.9999), figure(1e7), perCent(0.01234, true), perCent(-0.5)]).toEqual([
      '10',
      '1 × 10⁷',
      '+1.2 %',
      '−50 %',
    ]);
  });
});

describe('the page about the model', () => {
  let page: ReturnType<typeof mount> | null = null;
  afterEach(async () => {
    if (page !== null) await unmount(page);
    page = null;
  });

  const opened = (checks: Checks): HTMLElement => {
    page = mount(Card, { target: document.body, props: { checks, words: english } });
    return document.body;
  };

  it('has one heading of the first rank, a title on every table, and the numbers it was given', () => {
    const row: Row = ['NPS 1', 1.05, 1, { share: 0.1 }];
    const body = opened({ sources: bySource([table('B36', [row])]), sensitivity: readSensitivity() });
    expect(body.querySelectorAll('h1')).toHaveLength(1);
    expect([...body.querySelectorAll('h2')].length).toBeGreaterThanOrEqual(5);
    for (const shown of body.querySelectorAll('table'))
      expect(shown.querySelector('caption')?.textContent.trim()).not.toBe('');
    expect(body.textContent).not.toMatch(/\{\w+\}|NaN|undefined/);
    const cells = [...body.querySelectorAll('details td')].map((cell) => cell.textContent);
    expect(cells.slice(0, 4)).toEqual(['1', '1.05', '+5 %', '± 10 %']);
    expect(body.textContent).toContain('excavation, 1.5 × 1.0 × 1.3 m');
  });

  it('says so when it was opened without results, and shows the rest', () => {
    const { textContent } = opened(noChecks);
    expect(textContent).toContain(english.none);
    expect(textContent).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('says the same in Spanish, sentence by sentence and figure by figure', () => {
    const theirs = new Map(sentences(spanish));
    expect([...theirs.keys()]).toEqual(sentences(english).map(([place]) => place));
    for (const [place, sentence] of sentences(english)) {
      const other = theirs.get(place) ?? '';
      expect(slots(other), place).toEqual(slots(sentence));
      if (/[a-z]{4}/.test(sentence.replace(/\{\w+\}/g, ''))) expect(other, place).not.toBe(sentence);
    }
  });

  it('shows a figure that is missing instead of reading over it', () => {
    expect(fill('off by {much}', {})).toBe('off by {much}');
    expect(fill('off by {much}', { much: '1 %' })).toBe('off by 1 %');
  });
});
