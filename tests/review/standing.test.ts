import { describe, expect, it } from 'vitest';
import { digestOfDecision, type Decision } from '../../src/core/review/index.ts';
import { standingOf, wordOf } from '../../src/desk/listing.ts';
import { decided } from './runs.ts';

const signed = (name: string, more: Partial<Decision> = {}): Decision => ({
  ...decided({ assessor: { name, role: 'yard assessor' } }),
  signature: { algorithm: 'Ed25519', publicKey: '0'.repeat(64), value: '0'.repeat(128) },
  ...more,
});
const first = signed('A');
const second = signed('B', { decision: 'notYet', validity: null });
const later = signed('B', { replaces: digestOfDecision(second), replacesWhy: 'seen again' });
const { digest } = first.run;

describe('what was decided about a run', () => {
  it('is the word of each assessor who decided on it, and theirs alone to change', () => {
    const names = (decisions: readonly Decision[]) =>
      standingOf(decisions)
        .get(digest)
        ?.map(({ assessor, decision }) => `${assessor.name} ${decision}`);
    expect(names([first, second])).toEqual(['A demonstrated', 'B notYet']);
    expect(names([first, second, later])).toEqual(['A demonstrated', 'B demonstrated']);
  });

  it('is said to differ where it does, and is nothing where nobody decided', () => {
    expect(wordOf([])).toBeNull();
    expect(wordOf([first])).toBe('demonstrated');
    expect(wordOf([first, second])).toBe('divided');
    expect(wordOf([first, later])).toBe('demonstrated');
  });
});
