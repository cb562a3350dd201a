import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../src/core/run/chain.ts';
import { ENGINE, parseRecord, RECORD_BYTES_MOST, recordText } from '../../src/core/run/record.ts';
import { canonicalText, digestOfText, digestOfValue } from '../../src/core/run/digest.ts';
import type { RecordEntry, RunRecord } from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';

const entries: RecordEntry[] = [
  { atS: 0, action: { kind: 'site.do', task: 'readOrder' } },
  { atS: 20, action: { kind: 'valve.turn', angleRad: -1.5 } },
  { atS: 24.5, action: { kind: 'record.write', field: 'crew', value: 'two – “yard”' } },
];
const sealed = (unsealed: Omit<RunRecord, 'chain'>): RunRecord => ({
  ...unsealed,
  chain: chainOf(unsealed),
});
const record = (changes: Partial<RunRecord> = {}): RunRecord =>
  sealed({
    format: 'stillmain-run',
    version: 2,
    engine: ENGINE,
    scenario: exercise(),
    by: { person: 'Trainee 001', attempt: 1, begunAt: '2026-11-02T08:00:00Z' },
    entries,
    endDigest: digestOfText('end'),
    endS: 30,
    ...changes,
  });
const says = (text: string | Uint8Array): string => {
  const parsed = parseRecord(text);
  return parsed.state === 'unusable' ? parsed.problem.says : parsed.state;
};

describe('canonical text and digest', () => {
  it('writes the arrays, strings and numbers of RFC 8785 as the standard shows them', () => {
    // RFC 8785 section 3.2.2 and 3.2.3, the example of the standard, *from memory*; exact.
    const input = {
      numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
      string: '\u20ac$\u000f\nA\u0027\u0042\u0022\u005c\\\u0022/',
      literals: [null, true, false],
    };
    expect(canonicalText(input)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  it('hashes as the published SHA-256 and as the platform does', () => {
    // FIPS 180-4 example "abc", exact.
    expect(digestOfText('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    const text = recordText(record());
    expect(digestOfText(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
  });

  it('does not depend on the order in which a value was put together', () => {
    expect(digestOfValue({ b: 1, a: [2, { d: 3, c: 4 }] })).toBe(
      digestOfValue({ a: [2, { c: 4, d: 3 }], b: 1 }),
    );
    expect(digestOfValue({ a: [1, 2] })).not.toBe(digestOfValue({ a: [2, 1] }));
  });

  it('refuses what a file could not carry', () => {
    expect(() => canonicalText({ a: NaN })).toThrow();
    expect(() => canonicalText(undefined)).toThrow();
  });
});

describe('a run file', () => {
  it('reads back as it was written, from text or from bytes', () => {
    const text = recordText(record());
    expect(parseRecord(text)).toEqual({ state: 'sound', record: record() });
    expect(parseRecord(new TextEncoder().encode(text))).toEqual({ state: 'sound', record: record() });
  });

  it('names the first action that was changed after sealing', () => {
    const text = recordText(record()).replace('"angleRad":-1.5', '"angleRad":-1.4');
    const parsed = parseRecord(text);
    expect(parsed.state === 'altered' && parsed.firstBad).toBe(1);
  });

  it('names the place where an action was taken out', () => {
    const short = { ...record(), entries: [entries[0], entries[2]] };
    const parsed = parseRecord(recordText(short));
    expect(parsed.state === 'altered' && parsed.firstBad).toBe(1);
  });

  it('notices another exercise put under the same actions', () => {
    const other = exercise();
    const parsed = parseRecord(recordText({ ...record(), scenario: { ...other, cutScore: 10 } }));
    expect(parsed.state === 'altered' && [parsed.where, parsed.firstBad]).toEqual(['scenario', 0]);
  });

  it('notices another person put over the same actions, or another end', () => {
    const by = { person: 'Trainee 002', attempt: 1, begunAt: '2026-11-02T08:00:00Z' };
    for (const changed of [{ by }, { by: undefined }, { endS: 31 }, { endDigest: digestOfText('fin') }]) {
      const parsed = parseRecord(recordText({ ...record(), ...changed }));
      expect(parsed.state === 'altered' && [parsed.where, parsed.firstBad]).toEqual(['end', 3]);
    }
  });

  it('tells a changed link from a changed action', () => {
    const { chain } = record();
    const parsed = parseRecord(recordText({ ...record(), chain: chain.with(2, digestOfText('link')) }));
    expect(parsed.state === 'altered' && parsed.where).toBe('chain[2]');
  });

  it('of the first version is read as it was written, by the chain that it had', () => {
    const old = sealed({
      format: 'stillmain-run',
      version: 1,
      engine: 'stillmain 0.2.0',
      scenario: exercise(),
      entries,
      endDigest: digestOfText('end'),
      endS: 30,
    });
    expect(old.chain).toHaveLength(entries.length);
    expect(parseRecord(recordText(old))).toEqual({ state: 'sound', record: old });
    const text = recordText(old).replace('"angleRad":-1.5', '"angleRad":-1.4');
    const parsed = parseRecord(text);
    expect(parsed.state === 'altered' && [parsed.where, parsed.firstBad]).toEqual(['entries[1]', 1]);
  });

  it('is refused when it is not its own canonical form', () => {
    const text = recordText(record());
    expect(says(`${text}\n`)).toBe('The file is not its own canonical form.');
    expect(says(JSON.stringify(JSON.parse(text), null, 1))).toBe('The file is not its own canonical form.');
    expect(says(text.replace('"atS":20', '"atS":20.0'))).toBe('The file is not its own canonical form.');
    expect(says(text.replace('"atS":0}', '"atS":-0}'))).toBe('The file is not its own canonical form.');
  });

  it('is refused when it is too large, too deep, not text or not a run', () => {
    expect(says(' '.repeat(RECORD_BYTES_MOST + 1))).toContain('larger');
    expect(says('['.repeat(30) + ']'.repeat(30))).toContain('deeper');
    expect(says(new Uint8Array([0xff, 0xfe, 0x41]))).toContain('UTF-8');
    expect(says('{}')).toBe('This entry is missing.');
    expect(says('{')).toBe('The file is not JSON.');
  });

  it('is refused when an action is none a hand can do, with its place', () => {
    const text = recordText(record()).replace('"angleRad":-1.5', '"angleRad":-9');
    const parsed = parseRecord(text);
    expect(parsed.state === 'unusable' && parsed.problem.where).toBe('entries[1].action.angleRad');
  });

  it('is refused when the clock runs backwards', () => {
    const back = [entries[0], { ...entries[1], atS: 30 }, entries[2]];
    const parsed = parseRecord(recordText(record({ entries: back })));
    expect(parsed.state === 'unusable' && parsed.problem.where).toBe('entries[2].atS');
  });
});
