import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { personAt, type Person } from './person.ts';

/** What is kept in the browser: the run under way, its one writer, and the finished run. */
describe('a run kept in the browser', () => {
  let app: App;
  let person: Person;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
    person = personAt(app);
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await person.on('Site');
    await person.acts(
      'Order and people: Read the work order',
      'Order and people: Call gas control',
      'Wait 1 min',
    );
  });
  afterAll(() => app.close());

  it('stands where it stood after a reload, and goes on from there', async () => {
    const before = await person.clock();
    await app.reload();
    await app.find('button', 'Run');
    expect(await person.clock()).toBe(before);
    await app.seeText('Gas control called');
    await person.on('Site');
    await person.act('Order and people: See that the permit is in hand');
    await app.reload();
    await app.find('button', 'Run');
    await app.seeText('Permit seen and in hand');
    app.expectNoComplaints();
  });

  it('goes back by one action and stays there after a reload', async () => {
    await app.pressByKey('button', 'Undo the last action');
    await app.page.waitForFunction(() => !document.body.innerText.includes('Permit seen and in hand'));
    await app.reload();
    await app.find('button', 'Run');
    expect(await app.readText()).not.toContain('Permit seen and in hand');
    expect(await app.readText()).toContain('Gas control called');
  });

  it('has one writer: a second tab is told plainly and offers no hands', async () => {
    const second = await app.page.browser().newPage();
    await second.goto(app.page.url(), { waitUntil: 'load' });
    await second.waitForFunction(() => document.body.innerText.includes('open in another tab'));
    expect(await second.evaluate(() => document.querySelectorAll('[role=tab]').length)).toBe(0);
    await second.close();
  });

  it('is offered on the start page and by its exercise, until it ends', async () => {
    await app.goTo('#/');
    await app.seeText('in progress');
    await app.goTo('#/practice/abandon-1in-tee-on-4in-main');
    await app.pressByKey('link', 'Go on with it');
    await app.find('button', 'Run');
    await person.on('Stop & refer');
    await app.pressByKey('button', 'Stop work and refer back, because: another reason');
    await app.pressByKey('button', 'Yes');
    await app.find('link', 'Go to the debrief');
    await app.pressByKey('button', 'Undo the last action');
    await app.page.waitForFunction(() => !document.body.innerText.includes('The run has ended'));
    await app.reload();
    await person.on('Stop & refer');
    await app.pressByKey('button', 'Stop work and refer back, because: another reason');
    await app.pressByKey('button', 'Yes');
    await app.pressByKey('link', 'Go to the debrief');
    await app.find('heading', 'Findings');
    await app.goTo('#/');
    await app.seeText(/not passed, \d+ of 100/i);
    await app.reload();
    await app.seeText(/not passed, \d+ of 100/i);
    app.expectNoComplaints();
  });

  it('opens again as a file that was saved, judged the same', async () => {
    const text = await app.page.evaluate(
      () =>
        new Promise<string>((resolve, reject) => {
          const opening = indexedDB.open('stillmain');
          opening.onsuccess = () => {
            const all = opening.result.transaction('records').objectStore('records').getAll();
            all.onsuccess = () => resolve((all.result[0] as { record: string }).record);
            all.onerror = () => reject(all.error ?? new Error('not read'));
          };
        }),
    );
    await app.goTo('#/');
    const field = await app.page.waitForSelector('input[type=file]');
    await field?.evaluate((input, record) => {
      const files = new DataTransfer();
      files.items.add(new File([record], 'a-run.run.json', { type: 'application/json' }));
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, text);
    await app.find('heading', 'Findings');
    await app.goTo('#/');
    await app.page.waitForFunction(() => document.querySelectorAll('tbody tr').length === 2);
  });

  it('refuses a file that is no run, and says why', async () => {
    const field = await app.page.waitForSelector('input[type=file]');
    await field?.evaluate((input) => {
      const files = new DataTransfer();
      files.items.add(new File(['{"a":1}'], 'not-a-run.json', { type: 'application/json' }));
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await app.seeText('could not be opened');
  });
});
