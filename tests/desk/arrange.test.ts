import { describe, expect, it } from 'vitest';
import type { RunRow } from '../../src/core/review/index.ts';
import { everything, grouped, lineOf, sieved, sorted, type Line } from '../../src/desk/table/arrange.ts';
import { scrollTo, windowOf } from '../../src/desk/table/window.ts';

const blank: RunRow = {
  digest: '0'.repeat(64),
  file: 'a.run.json',
  person: null,
  attempt: null,
  begunAt: null,
  scenarioId: null,
  title: null,
  engine: null,
  integrity: 'damaged',
  firstBad: null,
  verdict: null,
  ending: null,
  score: null,
  headings: null,
  critical: [],
  holdPoints: [],
  falselySigned: [],
  actions: 0,
  simulatedS: null,
  said: null,
};
const judged = (person: string, score: number, more: Partial<RunRow> = {}): Line =>
  lineOf(
    { ...blank, person, score, integrity: 'same', verdict: score >= 80 ? 'pass' : 'fail', ...more },
    'open',
  );
const lines = [
  judged('Trainee 002', 70, { begunAt: '2026-03-01T08:00:00Z', scenarioId: 'one', title: 'One' }),
  judged('Trainee 001', 95, { begunAt: '2026-04-01T08:00:00Z', scenarioId: 'two', title: 'Two' }),
  judged('Trainee 001', 40, {
    begunAt: '2026-02-01T08:00:00Z',
    verdict: 'critical',
    critical: ['holdFalse'],
  }),
  lineOf(blank, 'begun'),
];
const scores = (found: readonly Line[]): (number | null)[] => found.map(({ row }) => row.score);

describe('the table of runs', () => {
  it('sorts by a column both ways; what has no name or date comes last', () => {
    expect(scores(sorted(lines, { by: 'score', down: true }))).toEqual([95, 70, 40, null]);
    expect(scores(sorted(lines, { by: 'person', down: false }))).toEqual([95, 40, 70, null]);
    expect(scores(sorted(lines, { by: 'date', down: true }))).toEqual([95, 70, 40, null]);
    expect(scores(sorted(lines, { by: 'verdict', down: false }))).toEqual([95, 70, 40, null]);
  });

  it('finds runs by words, by verdict, by a critical finding and by how far the review has come', () => {
    const found = (sieve: Partial<typeof everything>) => scores(sieved(lines, { ...everything, ...sieve }));
    expect(found({ text: 'trainee 001' })).toEqual([95, 40]);
    expect(found({ text: 'ONE 002' })).toEqual([70]);
    expect(found({ verdict: 'unjudged' })).toEqual([null]);
    expect(found({ critical: 'holdFalse' })).toEqual([40]);
    expect(found({ review: 'begun' })).toEqual([null]);
    expect(found({ exercise: 'two', integrity: 'same' })).toEqual([95]);
  });

  it('puts each group under its heading with how many it holds', () => {
    const shown = grouped(lines, 'person');
    expect(
      shown.map((one) => (one.kind === 'group' ? `${one.name}: ${one.runs}` : one.line.row.score)),
    ).toEqual(['Trainee 002: 1', 70, 'Trainee 001: 2', 95, 40, ': 1', null]);
    expect(grouped(lines, 'none')).toHaveLength(4);
  });

  it('keeps in the page what is seen and a little more, at both ends and beyond', () => {
    expect(windowOf(0, 440, 44, 10_000)).toEqual({ from: 0, to: 18 });
    expect(windowOf(44 * 5000, 440, 44, 10_000)).toEqual({ from: 4992, to: 5018 });
    expect(windowOf(44 * 20_000, 440, 44, 10_000)).toEqual({ from: 10_000, to: 10_000 });
    expect(windowOf(0, 440, 44, 0)).toEqual({ from: 0, to: 0 });
    expect(scrollTo(3, 0, 440, 44)).toBe(0);
    expect(scrollTo(10, 0, 440, 44)).toBe(44);
    expect(scrollTo(2, 440, 440, 44)).toBe(88);
  });
});
