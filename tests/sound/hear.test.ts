import { describe, expect, it } from 'vitest';
import { gainOf } from '../../src/sound/index.ts';

describe('the ear', () => {
  it('is silent where a crew would hear nothing above the street', () => {
    expect(gainOf(44, false)).toBe(0);
    expect(gainOf(90, false)).toBe(0);
  });

  it('plays a louder jet louder and never past its loudest', () => {
    const gains = [46, 60, 75, 90, 110, 140].map((level) => gainOf(level, true));
    expect([...gains].sort((a, b) => a - b)).toEqual(gains);
    expect(gains[0]).toBeGreaterThan(0);
    expect(Math.max(...gains)).toBeLessThanOrEqual(0.5);
  });
});
