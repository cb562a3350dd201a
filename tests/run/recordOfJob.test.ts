import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import {
  advance,
  digestOf,
  integrity,
  parseRecord,
  recordText,
  replay,
  sealRecord,
  type RunState,
} from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';

const scenario = exercise();
const moments: RunState[] = [];
const { entries, run } = drive(scenario, steady, (now) => moments.push(now));
const record = sealRecord(scenario, entries, run);

/** Every number inside that a file could not carry, by its place. */
function odd(value: unknown, where: string): string[] {
  if (typeof value === 'number')
    return Number.isFinite(value) && !Object.is(value, -0) ? [] : [`${where}: ${value}`];
  if (typeof value !== 'object' || value === null) return value === undefined ? [`${where}: nothing`] : [];
  return Object.entries(value).flatMap(([key, inner]) => odd(inner, `${where}.${key}`));
}

describe('the record of a whole job', () => {
  it('reads back sound, and plays again to the same state', () => {
    const parsed = parseRecord(recordText(record));
    if (parsed.state !== 'sound') throw new Error(parsed.state);
    const again = replay(parsed.record.scenario, parsed.record.entries, undefined, parsed.record.endS);
    expect(integrity(parsed.record, again)).toBe('same');
    expect(digestOf(again)).toBe(record.endDigest);
  });

  it('is told altered when an action was changed, or its end', () => {
    const changed = entries.map((entry, i) => (i === 40 ? { ...entry, atS: entry.atS + 0.5 } : entry));
    expect(integrity({ ...record, entries: changed }, run)).toBe('altered');
    expect(integrity({ ...record, endDigest: '0'.repeat(64) }, run)).toBe('altered');
    expect(integrity({ ...record, endS: record.endS + 1 }, run)).toBe('altered');
    expect(integrity(record, { ...run, clockS: run.clockS + 1 })).toBe('differs');
  });

  it('holds no number at any moment that a file could not carry', () => {
    for (const now of moments.filter((_, i) => i % 25 === 0))
      expect(odd({ ...now, facts: [] }, 'run')).toEqual([]);
    expect(odd(run, 'run')).toEqual([]);
  });

  it('ends in the same digest when the state goes through a file half-way', () => {
    const half = moments[Math.floor(moments.length / 2)];
    const read = JSON.parse(JSON.stringify(half)) as RunState;
    expect(digestOf(advance(read, half.clockS + 90))).toBe(digestOf(advance(half, half.clockS + 90)));
  });

  it('has a digest that anything true of the run changes', () => {
    const was = digestOf(run);
    expect(digestOf({ ...run, clockS: run.clockS + 1e-9 })).not.toBe(was);
    expect(digestOf({ ...run, rig: { ...run.rig, hose: 'inHole' } })).not.toBe(was);
    expect(digestOf({ ...run, facts: run.facts.slice(0, -1) })).not.toBe(was);
  });

  it('is small enough to send', () => {
    // The project's own budget for a thirty-minute run, met by one of two and a half hours: 300 KiB zipped.
    expect(gzipSync(recordText(record)).length).toBeLessThan(300 * 1024);
  });
});
