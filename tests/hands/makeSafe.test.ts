import { describe, expect, it } from 'vitest';
import { driveFrom, makingSafe } from '../../src/core/hands/index.ts';
import { assess } from '../../src/core/judge/index.ts';
import { randomRun, wellDone } from '../run/randomRuns.ts';
import { shipped } from '../scenarios/shipped.ts';

/** So many states a job, each reached by a slip-ridden run of chance from somewhere in a good one. */
const STATES = 100;

describe.each([
  ['abandon-1in-tee-on-4in-main', 4000],
  ['abandon-34in-tee-on-112in-main', 5000],
  ['abandon-114in-tee-on-6in-main', 6000],
])('a crew that takes over anywhere on %s and makes safe', (name, firstSeed) => {
  const job = wellDone(shipped(name));
  const ends = new Map<string, number>();
  const unsafe: string[] = [];
  let isolatedWithoutNeed = 0;
  for (let seed = firstSeed, states = 0; states < STATES; seed += 1) {
    const run = randomRun(job, seed);
    if (run.rig.ending !== null) continue;
    states += 1;
    const made = assess(driveFrom(run, makingSafe).run);
    ends.set(made.ending, (ends.get(made.ending) ?? 0) + 1);
    const bad = made.findings.find((f) => f.id === 'stoppedUnsafe');
    if (bad !== undefined) unsafe.push(`seed ${seed}: ${bad.items.join(', ')}`);
    const quiet = run.ear.blowing === null && run.air.peakLelShare < 0.01;
    if (quiet && made.ending === 'isolated') isolatedWithoutNeed += 1;
  }

  it('always ends referred from a closed state, or with the main shut, and nobody hurt', () => {
    expect([...ends.keys()].every((end) => end === 'referred' || end === 'isolated')).toBe(true);
    expect(unsafe).toEqual([]);
  });

  it('shuts the main only as the last: seldom, and hardly ever in a quiet hole', () => {
    expect(ends.get('referred')).toBeGreaterThan(0.8 * STATES);
    expect(isolatedWithoutNeed).toBeLessThanOrEqual(0.1 * STATES);
  });
});
