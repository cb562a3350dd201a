import { cleanup, render, screen, within } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { preferences } from '../../src/panel/index.ts';
import SetList from '../../src/practice/home/SetList.svelte';
import { progressOf, shippedSets } from '../../src/practice/home/sets.ts';
import type { KeptRun } from '../../src/store/index.ts';
import { freshRun } from '../../src/store/types.ts';
import { setNames, shipped } from '../scenarios/shipped.ts';

const set = (id: string) => {
  const found = shippedSets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`No set ${id}`);
  return found;
};
const five = set('first-qualification');

/** An assessment by Ana that ended so, the later ones of a test being the newer. */
let day = 0;
function sat(name: string, verdict: string | null, score: number, other: Partial<KeptRun> = {}): KeptRun {
  day += 1;
  return {
    ...freshRun(shipped(name), { mode: 'assessment', person: 'Ana' }),
    begunAt: new Date(Date.UTC(2026, 0, day)).toISOString(),
    state: verdict === null ? 'working' : 'finished',
    verdict,
    score: verdict === null ? null : score,
    ...other,
  };
}
const states = (runs: readonly KeptRun[], of = five, person = 'Ana') =>
  progressOf(of, runs, person).steps.map(({ state }) => state);
const later = 'later';

describe('how far a person is in a set', () => {
  it('opens its exercises one after another where they stand in order, and all where they do not', () => {
    expect(states([])).toEqual(['due', later, later, later, later]);
    expect(states([sat(five.exercises[0], 'pass', 95)])).toEqual(['pass', 'due', later, later, later]);
    expect(states([sat(five.exercises[0], 'fail', 60)])).toEqual(['fail', 'due', later, later, later]);
    expect(states([sat(five.exercises[0], null, 0)])).toEqual(['working', later, later, later, later]);
    expect(new Set(states([], set('second-qualification')))).toEqual(new Set(['due']));
  });

  it('counts only assessments, of this person, and of each exercise the newest', () => {
    const [first] = five.exercises;
    expect(states([sat(first, 'pass', 95, { mode: 'practice' })])[0]).toBe('due');
    expect(states([sat(first, 'pass', 95, { person: 'Ben' })])[0]).toBe('due');
    expect(states([sat(first, 'pass', 95)], five, '')[0]).toBe('due');
    const again = [sat(first, 'pass', 95), sat(first, 'critical', 40)];
    expect(states(again)[0]).toBe('critical');
    expect(states([...again].reverse())[0]).toBe('critical');
  });

  it('is judged by the rule of the set', () => {
    const all = five.exercises.map((name) => sat(name, 'pass', 90));
    expect(progressOf(five, all, 'Ana').judged).toMatchObject({ verdict: 'pass', passed: 5, missing: [] });
    const one = [...all, sat(five.exercises[4], 'critical', 90)];
    expect(progressOf(five, one, 'Ana').judged.verdict).toBe('fail');
    expect(progressOf(five, all.slice(1), 'Ana').judged.missing).toEqual([five.exercises[0]]);
  });
});

describe('the sets on the start page', () => {
  beforeEach(() => {
    preferences.person = 'Ana';
  });
  afterEach(() => {
    cleanup();
    preferences.person = '';
  });

  it('are all there, with their rule, and open the exercise that is due as an assessment', async () => {
    const done = sat(five.exercises[0], 'pass', 95);
    render(SetList, { runs: [done] });
    for (const name of setNames)
      expect(await screen.findByRole('heading', { name: set(name).title })).toBeDefined();
    const section = screen.getByRole('region', { name: five.title });
    expect(section.textContent).toContain('4 of 5');
    expect(section.textContent).toContain('at least 85');
    expect(section.textContent).toContain('1 of 5 assessed, 1 passed');
    const links = within(section).getAllByRole('link');
    expect(links.map((link) => link.getAttribute('href'))).toEqual(
      five.exercises.slice(0, 2).map((id) => `#/assess/${id}`),
    );
  });

  it('say how to be counted to somebody without a name', async () => {
    preferences.person = '';
    render(SetList, { runs: [] });
    expect(await screen.findByRole('heading', { name: five.title })).toBeDefined();
    expect(screen.getAllByText(/Give your name/)).toHaveLength(setNames.length);
  });
});
