import { describe, expect, it } from 'vitest';
import { nameFile, openMemory } from '../../src/store/index.ts';
import { yardScenario } from '../session/yard.ts';

/** The database itself is proved in a real browser, by reloading it there. */
describe('runs kept while the page is open', () => {
  it('say that they will not outlast it', () => {
    expect(openMemory('a private window').notKept).toBe('a private window');
  });

  it('keep events in their order with the time reached', async () => {
    const store = openMemory('');
    const run = await store.begin(yardScenario());
    await store.append(run.id, { n: 1 }, 5);
    await store.append(run.id, { n: 2 }, 12.5);
    expect(await store.listEvents(run.id)).toEqual([{ n: 1 }, { n: 2 }]);
    expect((await store.findRun(run.id))?.reachedS).toBe(12.5);
    expect((await store.findRun(run.id))?.state).toBe('working');
  });

  it('are finished with their record, and gone when removed', async () => {
    const store = openMemory('');
    const run = await store.begin(yardScenario());
    await store.finish(run.id, '{}', { verdict: 'pass', score: 97 });
    expect(await store.findRun(run.id)).toMatchObject({ state: 'finished', verdict: 'pass', score: 97 });
    expect(await store.findRecord(run.id)).toBe('{}');
    await store.remove(run.id);
    expect(await store.findRun(run.id)).toBeUndefined();
    expect(await store.listRuns()).toEqual([]);
    await expect(store.append(run.id, {}, 1)).rejects.toThrow('no longer kept');
  });

  it('are under way again when something is added after their end', async () => {
    const store = openMemory('');
    const run = await store.begin(yardScenario());
    await store.finish(run.id, '{}', { verdict: 'fail', score: 12 });
    await store.append(run.id, { kind: 'rewound', toS: 4 }, 4);
    expect(await store.findRun(run.id)).toMatchObject({ state: 'working', verdict: null, score: null });
    expect(await store.findRecord(run.id)).toBeUndefined();
  });

  it('have names of their own', async () => {
    const store = openMemory('');
    const names = await Promise.all(Array.from({ length: 50 }, () => store.begin(yardScenario())));
    expect(new Set(names.map((run) => run.id)).size).toBe(50);
  });
});

describe('a saved run', () => {
  it('is called after its exercise and its time, in letters every system takes', () => {
    expect(nameFile('abandon-1in-tee', '2026-11-25T08:09:10.123Z')).toBe(
      'abandon-1in-tee.2026-11-25-08-09-10.run.json',
    );
  });
});
