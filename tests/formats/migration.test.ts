import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';
import { chainOf } from '../../src/core/run/chain.ts';
import { ENGINE, integrity, parseRecord } from '../../src/core/run/record.ts';
import { begin, recordText, type RunRecord } from '../../src/core/run/index.ts';
import { digestOfText } from '../../src/core/run/digest.ts';

/** An exercise as it was written in version 1. It is never changed: files like it are in people's hands. */
const firstText = readFileSync(new URL('1/scenario.json', import.meta.url), 'utf8');
type Loose = Record<string, unknown> & { job: { kit: Record<string, unknown>[] } };
const first = (change: (draft: Loose) => void = () => undefined): Loose => {
  const draft = JSON.parse(firstText) as Loose;
  change(draft);
  return draft;
};
const read = (value: unknown): Scenario => {
  const parsed = parseScenario(value);
  if ('problems' in parsed) throw new Error(`${parsed.problems[0].where}: ${parsed.problems[0].says}`);
  return parsed.scenario;
};

describe('an exercise of version 1', () => {
  it('is read as a whole abandonment with nothing planted and nothing done before', () => {
    const scenario = read(firstText);
    const { kind, family, work, faults, prelude, version, ...kept } = scenario;
    expect({ kind, family, work, faults, prelude, version }).toEqual({
      kind: 'job',
      family: 'sound',
      work: 'abandon',
      faults: [],
      prelude: [],
      version: 2,
    });
    expect({ ...kept, version: 1 }).toEqual(first());
  });

  it('is put among the exercises that its ending and its kit make it', () => {
    expect(read(first((d) => (d.intendedEnding = 'referred'))).family).toBe('stop');
    expect(read(first((d) => (d.job.kit[0].defects = { gritCdAM2: 1e-8 }))).family).toBe('fault');
  });

  it('is refused with the place where it holds what only a later version knows', () => {
    const parsed = parseScenario(first((d) => (d.faults = [])));
    const problems = [{ where: 'faults', says: 'This entry is not known here.' }];
    expect(parsed).toEqual({ problems, refusedAs: 'shape' });
  });

  it('tells what else is wrong with it by the places of the file', () => {
    const parsed = parseScenario(first((d) => (d.cutScore = 'high')));
    expect('problems' in parsed && parsed.problems.map((p) => p.where)).toEqual(['cutScore']);
  });

  it('of a version nobody has written yet is refused', () => {
    const parsed = parseScenario(first((d) => (d.version = 3)));
    expect('problems' in parsed && parsed.problems[0].where).toBe('version');
  });
});

describe('a run made on an exercise of version 1', () => {
  const entries = [{ atS: 3, action: { kind: 'site.do', task: 'readOrder' } }] as const;
  const older = { engine: 'stillmain 0.2.0', scenario: first() };
  const unsealed = {
    format: 'stillmain-run',
    version: 1,
    ...older,
    entries,
    endDigest: digestOfText('end'),
    endS: 10,
  } as const;
  const file = { ...unsealed, chain: chainOf(unsealed) };
  const text = recordText(file as unknown as RunRecord);

  it('is still believed by its own chain, and shown with the exercise brought up to date', () => {
    const parsed = parseRecord(text);
    expect(parsed.state).toBe('sound');
    expect(parsed.state === 'sound' && parsed.record.scenario).toEqual(read(first()));
  });

  it('is not judged as if today’s engine had made it', () => {
    const parsed = parseRecord(text);
    if (parsed.state !== 'sound') throw new Error(parsed.state);
    expect(parsed.record.engine).not.toBe(ENGINE);
    expect(integrity(parsed.record, begin(parsed.record.scenario))).toBe('differs');
  });

  it('names the first action that was changed after sealing', () => {
    const parsed = parseRecord(text.replace('"atS":3', '"atS":4'));
    expect(parsed.state === 'altered' && parsed.firstBad).toBe(0);
  });
});
