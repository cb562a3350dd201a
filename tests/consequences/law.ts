import { expect, it } from 'vitest';
import { gasIs } from './gasIs.ts';

/**
 * A consequence of the trade, proved by a number and a law. Where the test's gas passes no opening at all, the same
 * proof must break, by a number or law that does not come out and not by a hand that was hindered on its way.
 */
export function consequence(title: string, prove: () => void): void {
  if (gasIs === 'free') it(title, prove);
  else {
    it(`cannot be shown without gas that flows: ${title}`, () => {
      expect(prove).toThrow(expect.toSatisfy(failsAsItShould));
    });
  }
}

/** Ours within a share of what the closed formula gives. A formula that gives nothing is no proof. */
export function expectNear(ours: number, formula: number, share: number, what = ''): void {
  expect(Math.abs(formula)).toBeGreaterThan(0);
  const says = `${what} ${ours} against ${formula}, ${((ours / formula - 1) * 100).toFixed(2)} %`;
  expect(Math.abs(ours / formula - 1), says).toBeLessThanOrEqual(share);
}

/** By its own assertion; or because gas that could not be bled ended the exercise on the way there. */
function failsAsItShould(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  return error.name === 'AssertionError' || ('hindrance' in error && error.hindrance === 'ended');
}
