import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openBenchDatabase } from '../../src/store/bench/database.ts';
import { openBenchMemory, type BenchStore, type KeptExercise } from '../../src/store/index.ts';
import { exercise } from '../scenario/exercise.ts';

let number = 0;
const kept = (id: string, changedAt: string): KeptExercise => ({
  id,
  document: { ...exercise(), id },
  notes: 'Watch the second proof.',
  workable: true,
  proof: null,
  changedAt,
});

describe.each<[string, () => Promise<BenchStore>]>([
  ['in the browser’s database', () => openBenchDatabase(`bench-${(number += 1)}`)],
  ['in memory', async () => openBenchMemory('a private window')],
])('a bench kept %s', (_, open) => {
  it('lists what is kept, the one changed last first, each as it was', async () => {
    const store = await open();
    const early = kept('own-early', '2031-01-01T08:00:00.000Z');
    const late = kept('own-late', '2031-01-02T08:00:00.000Z');
    await store.keep(early);
    await store.keep(late);
    expect(await store.list()).toEqual([late, early]);
    expect(await store.find('own-early')).toEqual(early);
    expect(await store.find('own-other')).toBeUndefined();
  });

  it('keeps one exercise a name: what comes later takes its place', async () => {
    const store = await open();
    const first = kept('own-one', '2031-01-01T08:00:00.000Z');
    await store.keep(first);
    await store.keep({ ...first, notes: 'Otherwise.' });
    expect((await store.list()).map(({ notes }) => notes)).toEqual(['Otherwise.']);
    await store.remove('own-one');
    expect(await store.list()).toEqual([]);
  });
});
