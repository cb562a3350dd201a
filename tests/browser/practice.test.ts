import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listed } from './deskHands.ts';
import { type App, openApp } from './harness.ts';
import { personAt } from './person.ts';

const exercise = 'abandon-1in-tee-on-4in-main';

/** The newest run's record as it lies in the browser, read as text. */
const newestRecord = (app: App): Promise<string> =>
  app.page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('stillmain');
        opening.onsuccess = () => {
          const all = opening.result.transaction('records').objectStore('records').getAll();
          all.onsuccess = () => resolve((all.result.at(-1) as { record: string }).record);
          all.onerror = () => reject(all.error ?? new Error('not read'));
        };
      }),
  );

describe('the first visit', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/', { firstVisit: true });
  });
  afterAll(() => app.close());

  it('is shown where to begin, and walked round by keyboard, without anything being covered', async () => {
    await app.pressByKey('link', 'Begin here');
    await app.pressByKey('button', 'Begin');
    await app.find('region', 'Two-minute tour');
    await app.screenshot('tour');
    for (const says of [
      'cut open',
      'Your hands',
      'What a crew reads',
      'The work order',
      'What happened',
      'go back',
    ]) {
      await app.pressByKey('button', 'Next');
      await app.page.waitForFunction(
        (text) => document.querySelector('.tour [role=status]')?.textContent?.includes(text),
        {},
        says,
      );
    }
    await app.pressByKey('button', 'That is all');
    expect(await app.has('region', 'Two-minute tour')).toBe(false);
    await app.reload();
    await app.find('heading', 'Hands');
    expect(await app.has('region', 'Two-minute tour')).toBe(false);
    app.expectNoComplaints();
  });
});

describe('the coach', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp(`#/practice/${exercise}`);
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.pressByKey('button', 'In words');
  });
  afterAll(() => app.close());

  it('shows what is due on a first run, and only answers when asked where that is wanted', async () => {
    await app.seeText('Show me where');
    await (await app.find('combobox', 'Coach')).select('asked');
    await app.seeText('costs no points here');
    expect(await app.readText()).not.toContain('Show me where');
    await app.pressByKey('button', 'Ask what is due');
    await app.seeText('Show me where');
    await app.screenshot('coach-asked');
    await personAt(app).on('Site');
    await personAt(app).act('Order and people: Read the work order');
    await app.seeText('Asked so far: 1');
  });

  it('tells what came of a slip, what led to it and the rule, in that order', async () => {
    await (await app.find('combobox', 'Coach')).select('fading');
    const person = personAt(app);
    await person.on('Tee');
    await person.on('Records');
    await app.pressByKey('button', 'Sign H1');
    await app.seeText('What led to it');
    const said = await app.readText();
    const places = ['What came of it', 'What led to it', 'The rule'].map((part) => said.indexOf(part));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(-1);
    await app.screenshot('coach-amiss');
    await app.pressByKey('button', 'I have seen it');
  });

  it('writes into the record that it was practice, and how often it was asked', async () => {
    await personAt(app).on('Stop & refer');
    await app.pressByKey('button', 'Stop work and refer back, because: another reason');
    await app.pressByKey('button', 'Yes');
    await app.find('link', 'Go to the debrief');
    expect(await newestRecord(app)).toContain('"sitting":{"asked":1,"mode":"practice"}');
  });

  it('marks the first departure in the debrief, and takes the run up again there with both ways on the chart', async () => {
    await app.pressByKey('link', 'Go to the debrief');
    await app.find('heading', 'One thing to do next');
    await app.seeText('First departure');
    await app.seeText('Due then');
    const again = await app.page.$$eval('button', (all) =>
      all.find((one) => one.textContent?.includes('and try again'))?.textContent?.trim(),
    );
    await app.pressByKey('button', again ?? '');
    await app.find('heading', 'Hands');
    await app.seeText('given up');
    expect(await app.readText()).toContain('Read the work order.');
    expect(await app.readText()).not.toContain('Hold point H1 is signed');
    app.expectNoComplaints();
  });
});

describe('an assessment', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp(`#/practice/${exercise}`);
    await app.pressByKey('button', 'Begin the assessment');
    expect(await app.has('button', 'Pause'), 'nobody is assessed without a name').toBe(false);
    await app.fill('Your name, for the run’s file (an assessment needs it)', 'A. Trainee');
    await app.pressByKey('button', 'Begin the assessment');
    await app.pressByKey('button', 'Pause');
  });
  afterAll(() => app.close());

  it('is silent: no coach, no way back, no evidence weighed, no stage pointed out', async () => {
    const said = await app.readText();
    expect(said).toContain('Assessment');
    expect(said).not.toContain('Show me where');
    expect(await app.has('button', 'Undo the last action')).toBe(false);
    expect(await app.has('combobox', 'Coach')).toBe(false);
    expect(await app.has('button', 'Wait 5 min')).toBe(false);
    expect(await app.page.$('[aria-current=step]')).toBeNull();
    expect(await app.has('checkbox', 'Cut open')).toBe(false);
    await app.screenshot('assessment-1280');
  });

  it('tells in words only what a crew could see, feel, hear and read', async () => {
    await app.pressByKey('button', 'In words');
    await app.find('region', 'In words');
    expect(await app.readText()).not.toContain('Inside');
    await app.page.keyboard.press('u');
    await personAt(app).on('Site');
    await personAt(app).act('Order and people: Read the work order');
    await app.page.keyboard.press('u');
    await app.seeText('Read the work order.');
  });

  it('ends when it is handed in, and its record says that it was one', async () => {
    await app.pressByKey('button', 'Hand in as it stands');
    await app.pressByKey('button', 'Hand it in');
    await app.pressByKey('link', 'Go to the debrief');
    await app.find('heading', 'Replay');
    expect(await newestRecord(app)).toContain('"sitting":{"asked":0,"mode":"assessment"}');
    await app.screenshot('debrief-assessed');
  });

  it('comes to the desk of this browser with who was assessed, and is judged there as here', async () => {
    await app.goTo('#/desk');
    await app.pressByKey('button', 'Take in this browser’s own runs');
    await app.seeText('1 of 1 runs');
    const [line] = await listed(app);
    expect(line.slice(0, 1)).toEqual(['A. Trainee']);
    expect(line).toContain('assessment');
    expect(line).toContain('same');
    const link = await app.page.waitForSelector('tbody a');
    await link?.click();
    await app.find('heading', 'Replay');
    const said = await app.readText();
    expect(said).toContain('Sat as an assessment');
    expect(said).not.toContain('The file says of itself');
    app.expectNoComplaints();
  });
});

describe('watching', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp(`#/practice/${exercise}`);
  });
  afterAll(() => app.close());

  it('has the steady hand do the job act by act, and says why', async () => {
    await app.pressByKey('link', 'Watch it done first');
    await app.find('heading', 'Watch it done: Abandon a 1-inch service tee on a live 4-inch main');
    await app.pressByKey('button', 'In words');
    await app.pressByKey('button', 'Action after');
    const first = await app.readText({ role: 'region', name: 'Being done' });
    await app.pressByKey('button', 'Action after');
    await app.page.waitForFunction(
      (before) => document.querySelector('[aria-live=polite]')?.textContent !== before,
      {},
      first,
    );
    await app.pressByKey('button', 'Play');
    await app.pressByKey('button', 'Stop');
    await app.screenshot('watch');
    app.expectNoComplaints();
  });
});
