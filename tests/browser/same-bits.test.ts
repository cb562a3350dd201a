import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exercise } from '../scenario/exercise.ts';
import { randomDigests, wellDone } from '../run/randomRuns.ts';
import { buildEnginePage, openEngine, type EnginePage } from './engines/openEngine.ts';

/** Random runs held against each other; `npm run same-bits` asks for a thousand. */
const asked = Number(process.env.SAME_BITS_RUNS ?? 200);
const runs = Number.isInteger(asked) && asked > 0 ? asked : 200;
/** Runs asked of a browser at once, so that no single answer takes long. */
const batch = 25;

describe('one run in three engines', () => {
  const job = wellDone(exercise());
  const ours = randomDigests(job, 1, runs);
  let page: EnginePage;
  beforeAll(async () => {
    page = await buildEnginePage();
  });
  afterAll(() => page.remove());

  it('is never the same as another: each seed goes its own way', () => {
    expect(new Set(ours).size).toBe(runs);
    expect(ours[0]).toMatch(/^[0-9a-f]{64}$/);
  });

  it.each(['chromium', 'firefox'] as const)(
    `ends in the same bits in Node and in %s: the whole job and ${runs} random runs`,
    async (name) => {
      const engine = await openEngine(name, page);
      try {
        expect(engine.jobDigest).toBe(job.digest);
        const theirs: string[] = [];
        while (theirs.length < runs)
          theirs.push(...(await engine.digests(1 + theirs.length, Math.min(batch, runs - theirs.length))));
        const differing = ours.flatMap((digest, i) => (digest === theirs[i] ? [] : [i + 1]));
        console.log(
          `${engine.version}: ${runs - differing.length} of ${runs} runs as in Node ${process.version}`,
        );
        expect(differing).toEqual([]);
      } finally {
        await engine.close();
      }
    },
    600_000,
  );
});
