import { describe, expect, it } from 'vitest';
import { cohort } from '../../src/core/hands/index.ts';
import { recordText } from '../../src/core/run/index.ts';
import { groupOf, reassess, rowOf } from '../../src/core/review/index.ts';
import { exercise } from '../scenario/exercise.ts';

const invent = (size: number, seed: number) => [...cohort({ scenarios: [exercise()], size, seed })];
const runs = invent(14, 11);
const rows = runs.map(({ name, record }) => rowOf(name, reassess(recordText(record))));

describe('an invented cohort', () => {
  it('is as large as asked for, of nobody who exists, several attempts a trainee', () => {
    expect(runs).toHaveLength(14);
    expect(new Set(runs.map(({ name }) => name)).size).toBe(14);
    for (const { person } of rows) expect(person).toMatch(/^Trainee \d{3}$/);
    expect(Math.max(...rows.map(({ attempt }) => attempt ?? 0))).toBeGreaterThan(1);
    for (const { begunAt } of rows) expect(new Date(begunAt ?? '').toISOString().slice(0, 4)).toBe('2026');
  });

  it('is made of runs that are judged again the same, not all of them good', () => {
    expect(new Set(rows.map(({ integrity }) => integrity))).toEqual(new Set(['same']));
    const { passed, people } = groupOf(rows);
    expect(passed.count).toBeGreaterThan(0);
    expect(passed.count).toBeLessThan(14);
    expect(people).toBeGreaterThan(2);
  });

  it('holds one run with a false signature, and no other', () => {
    expect(rows.flatMap(({ falselySigned }) => falselySigned)).toEqual(['H2']);
    const [alone] = invent(1, 3);
    expect(rowOf(alone.name, reassess(recordText(alone.record))).falselySigned).toEqual(['H2']);
  });

  it('is the same for the same seed and another for another', () => {
    const text = (seed: number) => invent(3, seed).map(({ record }) => recordText(record));
    expect(text(11)).toEqual(invent(3, 11).map(({ record }) => recordText(record)));
    expect(text(12)).not.toEqual(text(11));
  });

  it('needs an exercise', () => {
    expect(() => [...cohort({ scenarios: [], size: 1, seed: 1 })]).toThrow(RangeError);
  });
});
