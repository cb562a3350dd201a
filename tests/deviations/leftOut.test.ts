import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/judge/index.ts';
import { steadyRun } from '../judge/play.ts';
import { isPaper, keyOf, leftOut } from './keys.ts';
import { whenLeftOut, whenUninspected, type Expected } from './table.ts';

const { run } = steadyRun();
const whole = assess(run);
const keys = [
  ...new Set(
    steadyRun()
      .entries.map((entry) => entry.action)
      .filter(isPaper)
      .map(keyOf),
  ),
];

function ruleFor(key: string): Expected | undefined {
  return key.startsWith('piece.inspect ')
    ? whenUninspected(key.slice('piece.inspect '.length))
    : whenLeftOut[key];
}

describe('an act left out of the model run', () => {
  it('has a rule for every act that moves no part', () => {
    expect(keys.length).toBeGreaterThan(80);
    expect(keys.filter((key) => ruleFor(key) === undefined)).toEqual([]);
  });

  it.each(keys.map((key) => [key]))('%s costs what the trade says it must', (key) => {
    const rule = ruleFor(key);
    const assessment = assess({ ...run, facts: leftOut(run.facts, key) });
    const lost = (heading: keyof typeof whole.headings): number =>
      whole.headings[heading].got - assessment.headings[heading].got;
    if (rule === undefined || 'harmless' in rule) {
      expect(assessment.score, key).toBe(whole.score);
      expect(assessment.verdict).toBe('pass');
      return;
    }
    expect(lost(rule.heading), rule.why).toBeGreaterThanOrEqual(rule.least);
    if (rule.critical) expect(assessment.verdict, rule.why).toBe('critical');
    else expect(assessment.verdict, rule.why).not.toBe('critical');
  });
});
