import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import type { BenchReport } from '../../src/cli/bench/index.ts';
import type { SensitivityReport } from '../../src/cli/sensitivity.ts';
import { runCommand } from '../../src/cli/program.ts';
import { canonicalText, chainOf, type RunRecord } from '../../src/core/run/index.ts';
import { exerciseText } from '../scenario/exercise.ts';

const exerciseFolder = new URL('../../scenarios/abandon-1in-tee-on-4in-main', import.meta.url).pathname;
const bench = mkdtempSync(join(tmpdir(), 'stillmain-'));
afterAll(() => rmSync(bench, { recursive: true, force: true }));
const at = (name: string) => join(bench, name);

const call = async (...args: string[]) => {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(args, { out: (t) => out.push(t), err: (t) => err.push(t), workerFile: null });
  return { code, out: out.join('\n'), err: err.join('\n') };
};

describe('stillmain drive', () => {
  it('lets the steady hand pass, tells it in one JSON document, and writes the run', async () => {
    const { code, out, err } = await call(
      'drive',
      exerciseFolder,
      '--hand',
      'steady',
      '-o',
      at('steady.json'),
      '--json',
    );
    expect(code).toBe(0);
    const told = JSON.parse(out) as Record<string, unknown>;
    expect(Object.keys(told)).toEqual(
      expect.arrayContaining([
        'verdict',
        'ending',
        'intendedEnding',
        'score',
        'headings',
        'findings',
        'holdPoints',
        'ledger',
        'peakLelFraction',
        'actions',
        'digest',
        'engine',
        'simulatedS',
        'wallS',
      ]),
    );
    expect([told.verdict, told.ending]).toEqual(['pass', 'complete']);
    expect(told.digest).toMatch(/^[0-9a-f]{64}$/);
    expect(err).toContain('steady');
    expect(existsSync(at('steady.json'))).toBe(true);
  });

  it('lets the hasty hand fail with code 1 and says why to a person', async () => {
    const { code, out } = await call(
      'drive',
      join(exerciseFolder, 'scenario.json'),
      '--hand',
      'hasty',
      '-o',
      at('hasty.json'),
    );
    expect(code).toBe(1);
    expect(out).toContain('Failed: critical finding.');
    expect(out).toContain('Signed without the evidence');
    expect(out).toContain('does not qualify');
  });
});

describe('stillmain judge', () => {
  it('finds a run the same when it plays it again', async () => {
    const { code, out } = await call('judge', at('steady.json'), '--json');
    const { runs } = JSON.parse(out) as { runs: Record<string, unknown>[] };
    expect(code).toBe(0);
    expect(runs).toHaveLength(1);
    expect(runs[0]).toMatchObject({ file: at('steady.json'), integrity: 'same', verdict: 'pass' });
    const record = JSON.parse(readFileSync(at('steady.json'), 'utf8')) as { endDigest: string };
    expect(runs[0].digest).toBe(record.endDigest);
  });

  it('names the first action that was changed, and ends with code 1', async () => {
    const text = readFileSync(at('steady.json'), 'utf8');
    const record = JSON.parse(text) as { entries: { action: { kind: string } }[] };
    const index = record.entries.findIndex(({ action }) => action.kind === 'keeper.pull');
    writeFileSync(at('altered.json'), text.replace('"torqueNm":142', '"torqueNm":143'));
    const { code, out } = await call('judge', at('altered.json'), '--json');
    const { runs } = JSON.parse(out) as { runs: Record<string, unknown>[] };
    expect(code).toBe(1);
    expect(runs[0]).toMatchObject({ integrity: 'altered', firstBad: index });
  });

  it('says that the end was changed when only the sealed end was', async () => {
    const text = readFileSync(at('steady.json'), 'utf8');
    writeFileSync(at('end.json'), text.replace(/"endDigest":"..../, '"endDigest":"0000'));
    const { code, out } = await call('judge', at('end.json'), '--json');
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      runs: [{ integrity: 'altered', where: 'end', verdict: 'pass' }],
    });
  });

  it('does not judge what another engine made', async () => {
    const record = JSON.parse(readFileSync(at('steady.json'), 'utf8')) as RunRecord;
    const engine = 'stillmain 9.9.9';
    const other = { ...record, engine, chain: chainOf({ ...record, engine }) };
    writeFileSync(at('other.json'), canonicalText(other));
    const { code, out } = await call('judge', at('other.json'));
    expect(code).toBe(1);
    expect(out).toContain('another engine (stillmain 9.9.9): not judged again');
  });

  it('takes a folder, judges every run in it, and tells what it cannot use on the error side', async () => {
    mkdirSync(at('many/deep'), { recursive: true });
    writeFileSync(at('many/a.json'), readFileSync(at('steady.json')));
    writeFileSync(at('many/deep/b.json'), readFileSync(at('hasty.json')));
    writeFileSync(at('many/deep/note.txt'), 'not a run');
    const good = await call('judge', at('many'), '--json');
    const { runs } = JSON.parse(good.out) as { runs: { file: string; verdict: string }[] };
    expect(runs.map((r) => [r.file, r.verdict])).toEqual([
      [at('many/a.json'), 'pass'],
      [at('many/deep/b.json'), 'critical'],
    ]);
    expect(good.code).toBe(1);
    writeFileSync(at('many/c.json'), '{"format":"stillmain-run"}');
    const bad = await call('judge', at('many'));
    expect(bad.code).toBe(2);
    expect(bad.err).toContain(`${at('many/c.json')}: `);
  });
});

describe('stillmain laws', () => {
  const table = new URL('../published/fluids-reference.csv', import.meta.url).pathname;

  it('holds every row of a table and says where no law of ours is claimed', async () => {
    const { code, out } = await call('laws', table, '--json');
    const rows = JSON.parse(out) as {
      case_id: string;
      ours: number | null;
      relative: number | null;
      note?: string;
    }[];
    const inFile = readFileSync(table, 'utf8').trim().split('\n').length - 1;
    expect(code).toBe(0);
    expect(rows.length).toBeLessThanOrEqual(inFile);
    expect(rows.length).toBeGreaterThan(150);
    for (const row of rows) expect(row.ours !== null || (row.note ?? '').length > 10, row.case_id).toBe(true);
  });

  it('refuses a table without its columns with code 2', async () => {
    writeFileSync(at('table.csv'), 'a,b\n1,2\n');
    const { code, err } = await call('laws', at('table.csv'));
    expect(code).toBe(2);
    expect(err).toContain(at('table.csv'));
  });
});

describe('stillmain schema', () => {
  it.each(['scenario', 'run'])(
    'prints a JSON Schema of a %s that an independent judge can use',
    async (document) => {
      const { code, out } = await call('schema', document);
      const schema = JSON.parse(out) as object;
      const valid = new Ajv2020({ strict: false }).compile(schema);
      const text = document === 'scenario' ? exerciseText : readFileSync(at('steady.json'), 'utf8');
      valid(JSON.parse(text));
      expect(valid.errors).toBeNull();
      expect(valid({ format: `stillmain-${document}` })).toBe(false);
      expect(code).toBe(0);
    },
  );
});

describe('stillmain drive on a set', () => {
  it('drives five exercises, writes five runs and judges the set by its own rule', async () => {
    const { code, out } = await call(
      'drive',
      'scenarios/sets/first-qualification.json',
      '-o',
      at('set'),
      '--json',
    );
    const made = JSON.parse(out) as { verdict: string; passed: number; runs: { scenario: string }[] };
    expect([code, made.verdict, made.passed]).toEqual([0, 'pass', 5]);
    for (const { scenario } of made.runs)
      expect(readFileSync(at(`set/${scenario}.json`), 'utf8')).toContain(scenario);
    const { code: asked, out: schema } = await call('schema', 'set');
    expect(asked).toBe(0);
    const valid = new Ajv2020({ strict: false }).compile(JSON.parse(schema) as object);
    expect(valid(JSON.parse(readFileSync('scenarios/sets/first-qualification.json', 'utf8')))).toBe(true);
  });
});

describe('stillmain drill', () => {
  it('cuts a drill that the steady hand passes from where it begins', async () => {
    const { code } = await call('drill', exerciseFolder, '--stage', 's7', '-o', at('drill.json'));
    expect(code).toBe(0);
    const driven = await call('drive', at('drill.json'), '--json');
    const { verdict, holdPoints } = JSON.parse(driven.out) as {
      verdict: string;
      holdPoints: { id: string }[];
    };
    expect([driven.code, verdict, holdPoints.map(({ id }) => id)]).toEqual([0, 'pass', ['H6']]);
  });

  it('says that there is no such stage', async () => {
    const { code, err } = await call('drill', exerciseFolder, '--stage', 's99', '-o', at('none.json'));
    expect(code).toBe(2);
    expect(err).toContain('There is no stage called s99');
  });
});

describe('stillmain bench', () => {
  it('measures the job, holds, blows, growth, length, random openings and other methods', async () => {
    const { code, out } = await call(
      'bench',
      '--actions',
      '500',
      '--openings',
      '300',
      '--patience',
      '20000',
      '--json',
    );
    const told = JSON.parse(out) as BenchReport;
    expect(code).toBe(0);
    expect(told.actions).toMatchObject({ n: 500, failures: 0 });
    expect(told.actions.tried).toBeGreaterThan(500);
    expect(told.actions.maxSteps).toBeLessThanOrEqual(1000);
    expect(told.openings).toMatchObject({ n: 300, failures: 0 });
    expect(told.fullJob.simulatedS).toBeGreaterThan(40 * 60);
    for (const cost of [told.fullJob.simPerCpuS, told.quietHold.simPerCpuS, told.blow.simPerCpuS])
      expect(cost).toBeGreaterThan(1000);
    expect(told.growth.map(({ cells }) => cells)).toEqual([4, 8, 16, 32]);
    expect(told.length.map(({ simulatedS }) => simulatedS)).toEqual([600, 3600, 14400, 28800]);
    // Linear in time: an hour in eight costs no more than an hour alone, with room for a disturbed machine.
    const [, hour, , eight] = told.length;
    expect(eight.ms / 8).toBeLessThan(2.5 * hour.ms);
    expect(told.rhs).toHaveLength(6);
    for (const { case: name, ours, bestScipy, oursError, odex } of told.rhs) {
      expect(ours, name).toBeLessThanOrEqual(bestScipy);
      expect(oursError, name).toBeLessThanOrEqual(5e-4);
      expect(odex.evaluations, name).toBeGreaterThan(100 * ours);
    }
  }, 180_000);

  it('wants a whole number of openings', async () => {
    expect((await call('bench', '--openings', 'many')).code).toBe(2);
  });
});

describe('stillmain sensitivity', () => {
  it('says what both ends of each assumed range make of proofs, stop and hole', async () => {
    const { code, out } = await call('sensitivity', '--json');
    const told = JSON.parse(out) as SensitivityReport;
    expect(code).toBe(0);
    expect(told.assumed.length).toBeGreaterThan(25);
    for (const { name, low, value, high, atLow, atHigh } of told.assumed) {
      expect(low <= value && value <= high, name).toBe(true);
      expect([atLow, atHigh], name).not.toEqual([told.base, told.base]);
    }
    expect(told.still).toContain('streetNoiseDb');
  });

  it('names the number, its range and what it moves to a person', async () => {
    const { out } = await call('sensitivity');
    expect(out).toMatch(
      /holeVolumeM3, excavation.*\(1\.2 … 4\)\n {4}hole peaks at [\d.]+ % LEL … [\d.]+ % LEL\n/,
    );
  });
});

describe('what cannot be used', () => {
  it.each([
    ['a place that is not there', ['drive', at('nowhere')], 'no such file or folder'],
    ['a hand nobody has', ['drive', exerciseFolder, '--hand', 'left'], 'There is no hand called left'],
    ['a document nobody knows', ['schema', 'poem'], 'There is no document called poem'],
    ['a command nobody knows', ['dance'], 'unknown command'],
    ['a command without its argument', ['judge'], 'missing required argument'],
  ])('%s ends with code 2 and one sentence', async (_, args, sentence) => {
    const { code, out, err } = await call(...args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
  });

  it('is told with its place inside the document', async () => {
    writeFileSync(at('bad.json'), exerciseText.replace('"boss": "sound"', '"boss": "shiny"'));
    const { code, err } = await call('drive', at('bad.json'));
    expect(code).toBe(2);
    expect(err).toContain(`${at('bad.json')}, job.workpiece.boss: `);
  });
});

describe('stillmain noticing', () => {
  it('prints a row for each exercise and what they come to together', async () => {
    const { code, out } = await call('noticing', exerciseFolder, '--every', '97');
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toMatch(/tried +matter +noticed +share +harmless +punished +no rule/);
    expect(out).toMatch(/^abandon-1in-tee-on-4in-main +\d+ +\d+ +\d+ +1\.000/m);
    expect(out).toMatch(/^together /m);
  });

  it('refuses a place where no exercise is', async () => {
    expect((await call('noticing', bench)).code).toBe(2);
  });
});
