import { describe, expect, it } from 'vitest';
import { columnsOf, tableRows, tell } from '../../src/panel/index.ts';
import type { Sample } from '../../src/session/index.ts';

const sample = (atS: number, headGaugePa: number | null = 1000): Sample => ({
  atS,
  mainGaugePa: 200_000,
  secondGaugePa: 200_000,
  headGaugePa,
  lelShare: 0.01,
});

describe('the strip chart', () => {
  it('runs forward in time with given-up stretches beside what was kept', () => {
    const columns = columnsOf([sample(0), sample(2), sample(8)], [[sample(2), sample(4)]], 'si');
    expect(columns.minutes).toEqual([...columns.minutes].sort((a, b) => a - b));
    expect(columns.main.filter((value) => value !== null)).toHaveLength(3);
    expect(columns.given.filter((value) => value !== null)).toHaveLength(2);
    expect(columns.main[0]).toBe(200);
  });

  it('draws no test head where there is none', () => {
    expect(columnsOf([sample(0, null), sample(2)], [], 'us').head[0]).toBeNull();
  });

  it('has a table twin of readable length that begins at the beginning', () => {
    const long = Array.from({ length: 4000 }, (_, i) => sample(i * 2));
    const rows = tableRows(long, 30);
    expect(rows.length).toBeLessThanOrEqual(31);
    expect(rows[0].atS).toBe(0);
    expect(tableRows(long.slice(0, 5), 30)).toHaveLength(5);
  });
});

describe('words of the screens', () => {
  it('fill their holes, and leave a missing one to be seen', () => {
    expect(tell('order.sign', { id: 'H1' })).toBe('Sign H1');
    expect(tell('order.sign')).toBe('Sign {id}');
  });
});
