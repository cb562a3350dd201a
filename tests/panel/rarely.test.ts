import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { rarely } from '../../src/panel/index.ts';

describe('what a browser would refuse to have done too often', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('is done at once, then at most twice a second, and the last of it for certain', () => {
    const { ask } = rarely();
    const done: number[] = [];
    for (let n = 0; n < 50; n += 1) {
      ask(() => done.push(n));
      vi.advanceTimersByTime(100);
    }
    vi.runAllTimers();
    expect(done[0]).toBe(0);
    expect(done.at(-1)).toBe(49);
    expect(done.length).toBeLessThanOrEqual(11);
    expect(done.length).toBeGreaterThanOrEqual(9);
  });

  it('is not done any more once it was dropped', () => {
    const { ask, drop } = rarely();
    const done: number[] = [];
    ask(() => done.push(1));
    ask(() => done.push(2));
    drop();
    vi.runAllTimers();
    expect(done).toEqual([1]);
  });
});
