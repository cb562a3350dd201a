import { describe, expect, it } from 'vitest';
import { cronbachAlpha } from '../../src/core/review/index.ts';
import { comparing } from './compare.ts';

/* Cronbach's alpha, k/(k−1)·(1 − Σs²/s²): worked examples of two teaching pages, data and variances read there. */
const alpha = comparing('Cronbach 1951', 'alpha, worked examples of teaching pages', 'copy', '1');
const printed = { absolute: 5.1e-5 };
const digits = (row: string): number[] => [...row].map(Number);

describe('Cronbach’s alpha', () => {
  it('of three items answered by four people, Σs² 4.25 and s² 12.25', () => {
    const rows = [4, 3, 5, 2].map((first, i) => [first, [5, 4, 5, 3][i], [4, 3, 5, 2][i]]);
    alpha('3 items × 4 people', cronbachAlpha(rows) ?? NaN, 0.9796, printed);
  });

  it('of three items answered by five people, Σs² 2.2 and s² 4.3', () => {
    const rows = ['343', '234', '445', '323', '444'].map(digits);
    alpha('3 items × 5 people', cronbachAlpha(rows) ?? NaN, 0.7326, printed);
  });

  it('of five items answered by ten people, s² of the totals 22.3222', () => {
    const rows = '43543 54454 32432 43343 55454 21321 44544 32432 54555 43443'.split(' ').map(digits);
    alpha('5 items × 10 people', cronbachAlpha(rows) ?? NaN, 0.9482, printed);
  });

  it('is not told where it has no meaning', () => {
    expect(cronbachAlpha([])).toBeNull();
    expect(cronbachAlpha([[1, 2, 3]])).toBeNull();
    expect(cronbachAlpha([[1], [2]])).toBeNull();
    expect(
      cronbachAlpha([
        [1, 2],
        [1, 2],
      ]),
    ).toBeNull();
    expect(() => cronbachAlpha([[1, 2], [1]])).toThrow(RangeError);
  });
});
