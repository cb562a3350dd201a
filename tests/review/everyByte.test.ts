import { describe, expect, it } from 'vitest';
import { reassess } from '../../src/core/review/index.ts';
import { advance, attempt, begin, recordText, sealRecord, type RunRecord } from '../../src/core/run/index.ts';
import { sayPlace } from '../../src/text/index.ts';
import { exercise } from '../scenario/exercise.ts';

/** A run of two actions on the first exercise with all left out that can be, so that its file is small. */
function smallRun(): RunRecord {
  const whole = exercise();
  const scenario = {
    ...whole,
    brief: 'B',
    workOrder: { ...whole.workOrder, says: [] },
    holdPoints: whole.holdPoints.slice(0, 1),
    // With less kit than a whole job asks for, stopping is all that can be intended.
    intendedEnding: 'referred' as const,
    job: {
      ...whole.job,
      kit: whole.job.kit.flatMap(({ kind, stamped }, i) =>
        stamped === undefined ? [{ id: `k${i}`, kind }] : [],
      ),
    },
  };
  const entries = [
    { atS: 0, action: { kind: 'site.do', task: 'readOrder' } },
    { atS: 60, action: { kind: 'gauge.read', gauge: 'main' } },
  ] as const;
  let run = begin(scenario);
  for (const { atS, action } of entries) {
    const attempted = attempt(advance(run, atS), action);
    if ('hindrance' in attempted) throw new Error(attempted.hindrance);
    run = attempted.run;
  }
  const by = { person: 'Trainee 001', attempt: 1, begunAt: '2026-11-02T08:00:00Z' };
  return sealRecord(scenario, entries, advance(run, 80), { by });
}

const record = smallRun();
const file = new TextEncoder().encode(recordText(record));
const changed = (at: number, byte: number): Uint8Array => {
  const copy = file.slice();
  copy[at] = byte;
  return copy;
};

describe('an exported run', () => {
  it('is small enough here for every byte to be tried, and sound as it stands', () => {
    expect(file.length).toBeLessThanOrEqual(4096);
    const told = reassess(file);
    expect([told.integrity, told.firstBad]).toEqual(['same', null]);
  });

  // Another digit or letter of the same kind, a letter for anything, and no text at all.
  it.each([
    ['its neighbour', (byte: number) => byte ^ 1],
    ['one with another high bit', (byte: number) => byte ^ 0x80],
    ['a nought', (byte: number) => (byte === 48 ? 49 : 48)],
    ['a space', (byte: number) => (byte === 32 ? 95 : 32)],
  ])('is refused with the first bad place named when any one byte becomes %s', (_, other) => {
    for (let at = 0; at < file.length; at += 1) {
      const told = reassess(changed(at, other(file[at])));
      const where = `byte ${at}: ${told.integrity}`;
      expect(['altered', 'damaged'], where).toContain(told.integrity);
      if (told.firstBad === null) throw new Error(`${where}, no place named`);
      const { byte, where: place } = told.firstBad;
      expect(byte !== null || place !== '', where).toBe(true);
      // Nothing before the change is blamed but the word it stands in; bytes that are no text are named exactly.
      if (byte !== null) expect(byte, where).toBeGreaterThanOrEqual(at - 70);
      if (told.firstBad.why === 'notUtf8') expect(byte, where).toBe(at);
      expect(sayPlace(told.firstBad), where).toMatch(/^First bad place: .+; .+\.( .+)?$/);
    }
  });

  it('is refused when a byte is taken out or put in, anywhere', () => {
    for (let at = 0; at < file.length; at += 7) {
      const without = new Uint8Array([...file.subarray(0, at), ...file.subarray(at + 1)]);
      const withOne = new Uint8Array([...file.subarray(0, at), 49, ...file.subarray(at)]);
      expect(['altered', 'damaged'], `out at ${at}`).toContain(reassess(without).integrity);
      expect(['altered', 'damaged'], `in at ${at}`).toContain(reassess(withOne).integrity);
    }
  });

  it('names the action that was changed, not the ones behind it', () => {
    const text = recordText(record).replace('"gauge":"main"', '"gauge":"head"');
    const { integrity, firstBad } = reassess(text);
    expect([integrity, firstBad?.where, firstBad?.entry]).toEqual(['altered', 'entries[1]', 1]);
    expect(sayPlace(firstBad ?? fail())).toContain('action 2');
  });

  it('is refused when it was sealed again over an end that playing does not give', () => {
    const end = sealRecord(record.scenario, record.entries, advance(begin(record.scenario), 80), {
      by: record.by,
    });
    const { integrity, firstBad } = reassess(recordText(end));
    expect([integrity, firstBad?.why, firstBad?.where]).toEqual(['altered', 'otherEnd', 'endDigest']);
  });
});

function fail(): never {
  throw new Error('no bad place');
}

describe('a damaged run', () => {
  const text = recordText(record);

  it('cut off anywhere tells what survived, and never throws', () => {
    let most = 0;
    for (let length = 0; length < file.length; length += 13) {
      const { integrity, survived } = reassess(file.subarray(0, length));
      expect(integrity, String(length)).toBe('damaged');
      most = Math.max(most, survived?.entries.length ?? 0);
    }
    expect(most).toBe(2);
  });

  it('tells the person, the actions that can be read, and how many the chain still binds', () => {
    const cut = reassess(text.slice(0, text.indexOf('"format"'))).survived;
    expect(cut).toMatchObject({ person: 'Trainee 001', title: null, bound: 2 });
    expect(cut?.entries).toEqual(record.entries);
    const broken = reassess(text.replace('"gauge":"main"', '"gauge":"mean"')).survived;
    expect([broken?.entries.length, broken?.bound, broken?.title]).toEqual([1, 1, record.scenario.title]);
    const moved = reassess(
      text.replace('"atS":60', '"atS":61').replace('"version":2}', '"version":2'),
    ).survived;
    expect([moved?.entries.length, moved?.bound]).toEqual([2, 1]);
  });

  it('names the byte at which it stops being JSON, and the entry it is in', () => {
    const at = text.indexOf('"task"') + 6;
    const { firstBad } = reassess(`${text.slice(0, at)};${text.slice(at + 1)}`);
    expect(firstBad).toMatchObject({ why: 'notJson', byte: at, where: 'entries[0].action.task' });
  });
});
