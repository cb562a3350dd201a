import { describe, expect, it } from 'vitest';
import { wilson } from '../../src/core/review/index.ts';
import { comparing } from './compare.ts';

/* Newcombe, Statistics in Medicine 17 (1998) 857, method 3: Wilson's score interval without continuity correction. */
const newcombe = comparing(
  'Newcombe 1998',
  'Wilson’s interval, 95 %, examples *from memory*, each recomputed by its formula',
  'memory',
  '1',
);
/* Wilson 1927: (p + z²/2n ± z√(p(1−p)/n + z²/4n²))/(1 + z²/n) worked out by hand for other shares. */
const byHand = comparing('Wilson 1927', 'score interval, 95 %, its formula worked out', 'arithmetic', '1');
/** Printed to four decimals. */
const printed = { absolute: 5.1e-5 };

describe('Wilson’s interval', () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('for %s of %s is the published one', (count, of, low, high) => {
    const ours = wilson(count, of);
    newcombe(`${count} of ${of}, lower end`, ours.low, low, printed);
    newcombe(`${count} of ${of}, upper end`, ours.high, high, printed);
  });

  it.each([
    [23, 60, 0.2709, 0.5098],
    [50, 100, 0.4038, 0.5962],
    [9, 10, 0.5958, 0.9821],
    [10, 10, 0.7225, 1],
  ])('for %s of %s is what the formula gives', (count, of, low, high) => {
    const ours = wilson(count, of);
    byHand(`${count} of ${of}, lower end`, ours.low, low, printed);
    byHand(`${count} of ${of}, upper end`, ours.high, high, printed);
  });

  it('never leaves what a share can be, and is refused where there is no share', () => {
    for (let of = 1; of <= 40; of += 1) {
      for (let count = 0; count <= of; count += 1) {
        const { low, high } = wilson(count, of);
        expect(low >= 0 && high <= 1 && low <= count / of && count / of <= high).toBe(true);
      }
    }
    expect(() => wilson(1, 0)).toThrow(RangeError);
    expect(() => wilson(3, 2)).toThrow(RangeError);
    expect(() => wilson(-1, 2)).toThrow(RangeError);
  });
});
