import { describe, expect, it } from 'vitest';
import { reassess, rowOf } from '../../src/core/review/index.ts';
import { parseRecord, type RunRecord } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { beginRun } from '../../src/practice/work/begin.ts';
import { closeRun } from '../../src/practice/work/close.ts';
import { openSitting } from '../../src/session/index.ts';
import { openMemory, type KeptRun, type Store } from '../../src/store/index.ts';
import { saySaidOtherwise } from '../../src/text/index.ts';
import { paperJournal, yardScenario } from '../session/yard.ts';

const scenario = yardScenario();

/** Sits a run until it is handed in after a few minutes, and gives the file that was kept of it. */
async function sat(store: Store, kept: KeptRun, exercise: Scenario, asks = 0): Promise<string> {
  const sitting = openSitting(exercise, [], paperJournal(), kept.mode);
  sitting.begin();
  for (let n = 0; n < asks; n += 1) await sitting.ask();
  await sitting.wait(60);
  await sitting.handIn();
  await closeRun(store, kept, sitting.view());
  const text = await store.findRecord(kept.id);
  if (text === undefined) throw new Error('nothing was kept');
  return text;
}

function recordIn(text: string): RunRecord {
  const parsed = parseRecord(text);
  if (parsed.state !== 'sound') throw new Error(`the file is ${parsed.state}`);
  return parsed.record;
}

describe('the file of a run that was sat', () => {
  it('says who worked, how it was sat and what the screen said of it, all bound by its chain', async () => {
    const store = openMemory('');
    const kept = await beginRun(store, scenario, 'assessment', '  A. Trainee ');
    const text = await sat(store, kept, scenario);
    const record = recordIn(text);
    expect(record.by).toEqual({ person: 'A. Trainee', attempt: 1, begunAt: kept.begunAt });
    expect(record.sitting).toEqual({ mode: 'assessment', asked: 0 });
    const told = reassess(text);
    expect(told.integrity).toBe('same');
    expect(record.said).toMatchObject({ verdict: told.assessment?.verdict, score: told.assessment?.score });
    expect(rowOf('a.run.json', told)).toMatchObject({
      person: 'A. Trainee',
      begunAt: kept.begunAt,
      sitting: { mode: 'assessment' },
    });
    expect(reassess(text.replace('A. Trainee', 'B. Trainee')).integrity).toBe('altered');
    expect(reassess(text.replace('"asked":0', '"asked":7')).integrity).toBe('altered');
  });

  it('names nobody where no name was given', async () => {
    const store = openMemory('');
    const record = recordIn(await sat(store, await beginRun(store, scenario, 'practice', '  '), scenario));
    expect(record.by).toBeUndefined();
    expect(record.sitting?.mode).toBe('practice');
  });

  it('counts the attempts of one person at one exercise', async () => {
    const store = openMemory('');
    const other = { ...scenario, id: 'another-exercise' };
    const begin = async (exercise: Scenario, name: string): Promise<number | undefined> =>
      (await beginRun(store, exercise, 'practice', name)).attempt;
    expect(await begin(scenario, 'A. Trainee')).toBe(1);
    expect(await begin(scenario, 'B. Trainee')).toBe(1);
    expect(await begin(other, 'A. Trainee')).toBe(1);
    expect(await begin(scenario, 'A. Trainee')).toBe(2);
  });

  it('is judged at the desk as it was on the screen, hints that cost points among it', async () => {
    const costly = { ...scenario, coach: { hintPoints: 2 } };
    const store = openMemory('');
    const score = async (asks: number): Promise<readonly [number, number]> => {
      const kept = await beginRun(store, costly, 'practice', 'A. Trainee');
      const told = reassess(await sat(store, kept, costly, asks));
      if (told.record === null || told.assessment === null) throw new Error('not judged');
      expect(saySaidOtherwise(told.record, told.assessment)).toBeNull();
      return [told.assessment.score, told.record.said?.score ?? NaN];
    };
    const [unasked] = await score(0);
    const [asked, said] = await score(3);
    expect(asked).toBe(said);
    expect(asked).toBeLessThan(unasked);
  });
});

describe('what a file says of itself', () => {
  it('is told where judging it again says something else', async () => {
    const store = openMemory('');
    const text = await sat(store, await beginRun(store, scenario, 'practice', ''), scenario);
    const { record, assessment } = reassess(text);
    if (record?.said === undefined || assessment === null) throw new Error('not judged');
    const boast = { ...record, said: { ...record.said, verdict: 'pass', score: 99.5 } } as const;
    expect(saySaidOtherwise(boast, assessment)).toContain('99.5');
    expect(saySaidOtherwise(record, assessment)).toBeNull();
  });
});
