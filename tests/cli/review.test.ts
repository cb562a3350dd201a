import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/program.ts';
import type { RejudgedMany } from '../../src/cli/review/rejudgeMany.ts';
import { decisionText } from '../../src/core/review/index.ts';
import { openKeyMemory } from '../../src/store/signing/keyStore.ts';
import { openSigner } from '../../src/store/signing/sign.ts';
import { decided, steadyFile } from '../review/runs.ts';

const bench = mkdtempSync(join(tmpdir(), 'stillmain-review-'));
const at = (name: string) => join(bench, name);
afterAll(() => rmSync(bench, { recursive: true, force: true }));

const call = async (...args: string[]) => {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(args, { out: (t) => out.push(t), err: (t) => err.push(t), workerFile: null });
  return { code, out: out.join('\n'), err: err.join('\n') };
};
const rejudged = async (...args: string[]) => {
  const { out, code } = await call('rejudge', at('runs'), ...args, '--json');
  return { code, told: JSON.parse(out) as RejudgedMany };
};

beforeAll(async () => {
  await call('cohort', '--size', '5', '--seed', '7', '-o', at('runs'));
});

describe('stillmain cohort', () => {
  it('writes as many runs as asked for, one file each', () => {
    const files = readdirSync(at('runs'));
    expect(files).toHaveLength(5);
    for (const file of files) expect(file).toMatch(/^\d{4}-trainee-\d{3}-\d\.run\.json$/);
  });

  it('wants a whole number of runs', async () => {
    const { code, err } = await call('cohort', '--size', 'some', '-o', at('none'));
    expect([code, err]).toEqual([2, '--size: a whole number from 1 to 100000 is needed, not some.']);
    expect(existsSync(at('none'))).toBe(false);
  });
});

describe('stillmain rejudge', () => {
  it('changes nobody when nothing is changed', async () => {
    const { code, told } = await rejudged();
    expect([code, told.unchanged, told.changed, told.refused]).toEqual([0, 5, [], []]);
  });

  it('shows who changes and why before anything is kept', async () => {
    const { out, code } = await call(
      'rejudge',
      at('runs'),
      '--weights',
      'holdPoints=50,kit=5',
      '--cut',
      '99',
    );
    expect(out).toContain('Trainee 001');
    expect(out).toMatch(/Hold points [\d.]+ of 40 → [\d.]+ of 50/);
    expect(out).toContain('Nothing has been kept but the journal');
    expect([0, 1]).toContain(code);
    expect(readdirSync(at('runs'))).toHaveLength(5);
  });

  it('goes on from its journal where it was cut off, in the middle of a line too', async () => {
    const journal = at('again.jsonl');
    const first = (await rejudged('--cut', '99', '--journal', journal)).told;
    expect([first.judged, first.fromJournal]).toEqual([5, 0]);
    const lines = readFileSync(journal, 'utf8').trimEnd().split('\n');
    writeFileSync(journal, [...lines.slice(0, 4), lines[4].slice(0, 40)].join('\n'));
    const second = (await rejudged('--cut', '99', '--journal', journal)).told;
    expect([second.judged, second.fromJournal]).toEqual([2, 3]);
    expect(second.changed).toEqual(first.changed);
    const third = (await rejudged('--cut', '99', '--journal', journal)).told;
    expect([third.judged, third.fromJournal]).toEqual([0, 5]);
    const other = await call('rejudge', at('runs'), '--cut', '98', '--journal', journal);
    expect([other.code, other.err]).toEqual([2, expect.stringContaining('of another change or engine')]);
  });

  it('judges a file anew that has changed since the journal, and tells what it cannot use', async () => {
    const journal = at('changed.jsonl');
    await rejudged('--journal', journal);
    const [file] = readdirSync(at('runs'));
    const text = readFileSync(join(at('runs'), file), 'utf8');
    appendFileSync(join(at('runs'), file), ' ');
    const { code, told } = await rejudged('--journal', journal);
    writeFileSync(join(at('runs'), file), text);
    expect([code, told.judged, told.fromJournal]).toEqual([1, 1, 4]);
    expect(told.refused[0].says).toContain('First bad place');
  });

  it('writes the table of the new judgements only where asked', async () => {
    await rejudged('--keep', at('new.csv'));
    expect(readFileSync(at('new.csv'), 'utf8').trimEnd().split('\r\n')).toHaveLength(6);
  });

  it.each([
    ['a heading nobody knows', ['--weights', 'speed=5'], 'no heading called speed'],
    ['a weight that is none', ['--weights', 'kit=heavy'], '--weights, kit: a number'],
    ['a cut score out of bounds', ['--cut', '130'], '--cut: a number from 0 to 100'],
  ])('refuses %s with code 2', async (_, args, sentence) => {
    const { code, err } = await call('rejudge', at('runs'), ...args);
    expect(code).toBe(2);
    expect(err).toContain(sentence);
  });
});

describe('stillmain report', () => {
  beforeAll(() => writeFileSync(at('steady.json'), steadyFile));
  const report = async (...args: string[]) => {
    const { code, err } = await call('report', at('steady.json'), '-o', at('report.html'), ...args);
    return { code, err, page: code === 0 ? readFileSync(at('report.html'), 'utf8') : '' };
  };

  it('writes a page that stands alone', async () => {
    const { code, page } = await report();
    expect(code).toBe(0);
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(page).toContain('Trainee 001');
  });

  it('checks a decision’s counter-signature and says what came of it', async () => {
    const decision = await (await openSigner(openKeyMemory())).counterSign(decided());
    writeFileSync(at('decision.json'), decisionText(decision));
    expect((await report('--decision', at('decision.json'))).page).toContain(
      'when this report was made: good.',
    );
    const forged = { ...decision, assessor: { ...decision.assessor, name: 'Somebody else' } };
    writeFileSync(at('forged.json'), decisionText(forged));
    expect((await report('--decision', at('forged.json'))).page).toContain('when this report was made: BAD.');
    const other = { ...decision, run: { ...decision.run, digest: '0'.repeat(64) } };
    writeFileSync(at('other.json'), decisionText(other));
    const refused = await report('--decision', at('other.json'));
    expect([refused.code, refused.err]).toEqual([2, expect.stringContaining('of another run')]);
  });

  it('speaks Spanish for one page and English after it', async () => {
    expect((await report('--language', 'es')).page).toContain('Puntos de control');
    expect((await report()).page).toContain('Hold points');
    expect((await report('--language', 'fr')).code).toBe(2);
  });

  it('tells what survived of a damaged run instead', async () => {
    writeFileSync(at('cut.json'), steadyFile.slice(0, steadyFile.length / 2));
    const { code, err } = await call('report', at('cut.json'), '-o', at('cut.html'));
    expect(code).toBe(2);
    expect(err).toMatch(/First bad place: byte \d+.* actions can be read/);
    expect(existsSync(at('cut.html'))).toBe(false);
  });
});
