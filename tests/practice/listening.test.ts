import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { begin, read, type Readings } from '../../src/core/run/index.ts';
import { Listening } from '../../src/practice/work/listening.svelte.ts';
import { yardScenario } from '../session/yard.ts';

const run = begin(yardScenario());
const quiet: Readings = read(run);
/** A blow in the hole, well over the street's noise. */
const blowing: Readings = { ...quiet, holeHeard: true, holeDb: 95 };
const wanted = { sound: false, volume: 1 };
const kinds = (listening: Listening): string[] => listening.sounds.map(({ kind }) => kind);

describe('what is captioned', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('goes on for as long as the clock runs and it is heard', () => {
    const listening = new Listening();
    listening.follow({ run, readings: blowing, phase: 'running' }, wanted);
    vi.advanceTimersByTime(60_000);
    expect(kinds(listening)).toEqual(['hiss.hole']);
    listening.follow({ run: { ...run, clockS: 1 }, readings: quiet, phase: 'running' }, wanted);
    expect(kinds(listening)).toEqual([]);
  });

  it('dies away once the clock is held, and stays away', () => {
    const listening = new Listening();
    listening.follow({ run, readings: blowing, phase: 'running' }, wanted);
    listening.follow({ run, readings: blowing, phase: 'held' }, wanted);
    expect(kinds(listening)).toEqual(['hiss.hole']);
    vi.advanceTimersByTime(5000);
    expect(kinds(listening)).toEqual([]);
    listening.follow({ run, readings: blowing, phase: 'held' }, wanted);
    expect(kinds(listening)).toEqual([]);
  });

  it('is told again, and dies away again, when an act makes time pass on a held clock', () => {
    const listening = new Listening();
    listening.follow({ run, readings: blowing, phase: 'held' }, wanted);
    vi.advanceTimersByTime(5000);
    listening.follow({ run: { ...run, clockS: 6 }, readings: blowing, phase: 'held' }, wanted);
    expect(kinds(listening)).toEqual(['hiss.hole']);
    vi.advanceTimersByTime(5000);
    expect(kinds(listening)).toEqual([]);
  });
});
