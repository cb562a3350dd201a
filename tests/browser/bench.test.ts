import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/core/scenario/index.ts';
import { beginExercise, goToPart, handOver, plant, proofNotes } from './benchHands.ts';
import { choose } from './deskHands.ts';
import { type App, openApp } from './harness.ts';

/** What was saved as a file of that ending. */
async function saved(folder: string, ending: string): Promise<string> {
  for (let tries = 0; tries < 100; tries += 1) {
    const found = readdirSync(folder).find((name) => name.endsWith(ending));
    if (found !== undefined) return readFileSync(join(folder, found), 'utf8');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`nothing that ends in ${ending} was saved`);
}

const errorsOf = (app: App): Promise<string> => app.readText({ role: 'region', name: 'Errors' });

describe('an instructor at the bench', () => {
  let app: App;
  let folder: string;
  let file = '';
  beforeAll(async () => {
    app = await openApp('#/bench', { height: 1000 });
    folder = mkdtempSync(join(tmpdir(), 'stillmain-bench-'));
    const session = await app.page.createCDPSession();
    await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  });
  afterAll(async () => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('begins a 1-1/4 tee on a 2-inch main and plants a seat ring that lies, a curb valve that passes and gas at minute 12', async () => {
    await app.find('button', 'Begin');
    await app.screenshot('bench-shelf');
    await beginExercise(app, '2', '1-1/4');
    await app.seeText('No errors');
    await goToPart(app, 'Faults');
    await plant(app, 'A seat ring whose stamp lies');
    await plant(app, 'A curb valve that passes');
    await plant(app, 'Another gas leak near by');
    const triggers = await app.page.$$('select[id$="when.trigger"]');
    await triggers[2].select('time');
    await app.fill('Minute', '12');
    await app.page.keyboard.press('Tab');
    await app.screenshot('bench-faults');
  });

  it('is told that the kit has no ring left, goes there by the error, and hangs a spare on the board', async () => {
    expect(await errorsOf(app)).toContain('The job needs 1 seatRing of size 1-1/4; the kit has 0.');
    await app.press('link', 'Kit board');
    await app.find('heading', 'Kit board');
    await choose(app, 'Kind of piece', 'Seat ring');
    await choose(app, 'Its stamp', '1-1/4');
    await app.press('button', 'Hang it on the board');
    await app.seeText('No errors');
    await app.screenshot('bench-kit');
  });

  it('takes the last change back and brings it again', async () => {
    await app.press('button', 'Undo');
    expect(await errorsOf(app)).toContain('seatRing');
    await app.press('button', 'Redo');
    await app.seeText('No errors');
    await app.seeText('Saved');
  });

  it('proves it, and mends what the proof complains of', async () => {
    await goToPart(app, 'Prove');
    await app.press('button', 'Quick look: hands and faults');
    const first = await proofNotes(app);
    await app.screenshot('bench-complaint');
    expect(first.join('\n')).toMatch(/Grave.*A steady crew stops and refers back .*gas in the hole/);
    await goToPart(app, 'Scoring');
    await choose(app, 'Right ending', 'work is stopped and referred back');
    await goToPart(app, 'Prove');
    await app.seeText('The exercise has changed since.');
    await app.press('button', 'Quick look: hands and faults');
    await app.page.waitForSelector('progress');
    const second = await proofNotes(app);
    expect(second.join('\n')).not.toMatch(/stops and refers back/);
    await app.screenshot('bench-proof');
  });

  it('writes notes that stay with the instructor, and saves the exercise as a file', async () => {
    await goToPart(app, 'Notes for the instructor');
    await app.fill('Notes', 'Mind the third ring.');
    await app.page.keyboard.press('Tab');
    await app.seeText('Saved');
    await app.press('link', 'Back to the shelf');
    await app.press('button', 'Save file: Abandon a 1-1/4-inch service tee on a live 2-inch main');
    file = await saved(folder, '.json');
    expect(file).not.toContain('Mind the third ring.');
    expect(await saved(folder, '.notes.md')).toBe('Mind the third ring.');
    const parsed = parseScenario(file);
    if ('problems' in parsed) throw new Error(parsed.problems[0].says);
    expect(parsed.scenario.job.workpiece).toMatchObject({ mainNps: '2', teeSize: '1-1/4' });
    expect(parsed.scenario.faults).toEqual([
      { fault: 'mislabelledSeatRing', on: 'seatRing-114', when: { trigger: 'start' } },
      { fault: 'curbPassing', when: { trigger: 'start' } },
      { fault: 'otherLeak', when: { trigger: 'time', atS: 720 } },
    ]);
    app.expectNoComplaints();
  });

  it('finds the draft again after a reload', async () => {
    await app.reload();
    await app.press('link', 'Edit Abandon a 1-1/4-inch service tee on a live 2-inch main');
    await goToPart(app, 'Notes for the instructor');
    expect(await app.page.$eval('textarea', (area) => area.value)).toBe('Mind the third ring.');
  });

  it('has it opened and begun by a trainee in another browser', async () => {
    const trainee = await openApp('#/');
    try {
      await trainee.find('heading', 'Exercises');
      await handOver(trainee, 'exercise.json', file);
      await trainee.find('heading', 'Abandon a 1-1/4-inch service tee on a live 2-inch main');
      await trainee.press('button', 'Begin');
      await trainee.find('tablist', 'What to put hands on');
      await trainee.goTo('#/');
      await trainee.find('heading', 'Your own');
      trainee.expectNoComplaints();
    } finally {
      await trainee.close();
    }
  });

  it('refuses a file that is no exercise, with the place and the reason', async () => {
    await app.goTo('#/bench');
    await app.find('heading', 'Open exercise files');
    await handOver(app, 'wrong.json', file.replace('"cutScore": 80', '"cutScore": 180'));
    await app.seeText('cutScore: The number must be at most 100; it is 180.');
  });
});
