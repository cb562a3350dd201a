import { describe, expect, it } from 'vitest';
import { judgeSet } from '../../src/core/judge/index.ts';
import { parseSet, type ExerciseSet } from '../../src/core/scenario/index.ts';
import { setNames, setText, shippedNames } from './shipped.ts';

const read = (text: string): ExerciseSet => {
  const parsed = parseSet(text);
  if ('problems' in parsed) throw new Error(parsed.problems[0].says);
  return parsed.set;
};
const five = read(setText('first-qualification'));

describe('the shipped sets', () => {
  it('are two of five exercises each, all of them shipped, and say that a set qualifies nobody', () => {
    expect(setNames.length).toBeGreaterThanOrEqual(2);
    for (const name of setNames) {
      const set = read(setText(name));
      expect(set.id).toBe(name);
      expect(set.exercises).toHaveLength(5);
      for (const exercise of set.exercises) expect(shippedNames, name).toContain(exercise);
      expect(set.says).toContain('it does not qualify');
    }
  });
});

describe('a set', () => {
  const made = (...scores: readonly (readonly ['pass' | 'fail' | 'critical', number])[]) =>
    judgeSet(five, new Map(scores.map(([verdict, score], i) => [five.exercises[i], { verdict, score }])));

  it('is passed by four of five at its mean score, and not by three', () => {
    const good = ['pass', 95] as const;
    expect(made(good, good, good, good, ['fail', 70]).verdict).toBe('pass');
    expect(made(good, good, good, ['fail', 79], ['fail', 79]).verdict).toBe('fail');
  });

  it('is failed by one critical verdict, by a low mean, and by what was not done', () => {
    const good = ['pass', 95] as const;
    expect(made(good, good, good, good, ['critical', 95]).verdict).toBe('fail');
    const low = ['pass', 82] as const;
    expect(made(low, low, low, low, low)).toMatchObject({ verdict: 'fail', passed: 5, meanScore: 82 });
    expect(made(good, good, good)).toMatchObject({
      verdict: 'fail',
      missing: five.exercises.slice(3),
      meanScore: 57,
    });
  });

  it('that cannot be is refused with the place and the reason', () => {
    const asked = (change: object) => {
      const parsed = parseSet(JSON.stringify({ ...five, ...change }));
      return 'problems' in parsed ? parsed.problems.map(({ where }) => where) : [];
    };
    expect(asked({})).toEqual([]);
    expect(asked({ exercises: [...five.exercises, five.exercises[0]] })).toEqual(['exercises[5]']);
    expect(asked({ pass: { ...five.pass, atLeast: 6 } })).toEqual(['pass.atLeast']);
    expect(asked({ order: 'backwards' })).toEqual(['order']);
    expect(asked({ colour: 'red' })).toEqual(['colour']);
    expect('problems' in parseSet('{')).toBe(true);
  });
});
