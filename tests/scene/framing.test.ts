import { describe as group, expect, it } from 'vitest';
import scenarioFile from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { drive, steady } from '../../src/core/hands/index.ts';
import { read, type RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { describe, shownOf } from '../../src/scene/index.ts';

/** Share of the picture's height that must hold something that stands, when a piece has come off. */
const LEAST = 0.65;

group('when a piece has come off, the view that follows the work looks at what stands', () => {
  const shares = new Map<string, number>();
  let facts = 0;
  drive(scenarioFile as unknown as Scenario, steady, (run: RunState) => {
    for (; facts < run.facts.length; facts++) {
      const fact = run.facts[facts];
      if (fact.fact !== 'done' || fact.action.kind !== 'piece.remove') continue;
      const { work, marks, hole } = describe(run.rig, shownOf(run, read(run), null));
      if (work === null || work.as !== 'section') continue;
      const [low, high] = [work.target[2] - work.tallM / 2, work.target[2] + work.tallM / 2];
      const filled = Math.min(high, marks.topZM) - Math.max(low, -2 * hole.main.radiusM);
      shares.set(`${fact.action.piece} at ${run.clockS.toFixed(0)} s`, filled / work.tallM);
    }
  });

  it('many pieces come off in the whole job', () => expect(shares.size).toBeGreaterThan(12));

  it.each([...shares])('%s', (_piece, share) => expect(share).toBeGreaterThan(LEAST));
});
