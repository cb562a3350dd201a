import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { spillsSideways, violations } from './axe.ts';
import { type App, openApp } from './harness.ts';
import { personAt } from './person.ts';
import { inEnglish } from './tongue.ts';
import { choose } from './whole-job.ts';

const widths = [390, 820, 1280, 1920] as const;

describe.each(['light', 'dark', 'contrast'] as const)('the pages in the %s theme', (theme) => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/', { darkTheme: theme === 'dark' });
    if (theme === 'contrast') await choose(app, inEnglish, 'Theme', 'contrast');
  });
  afterAll(() => app.close());

  it('give the start page no violation at any width', async () => {
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      await app.find('heading', 'Exercises');
      expect(await violations(app), `at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`home-${theme}-${width}`);
    }
  });

  it('give the page about the model no violation at any width, with every table open', async () => {
    await app.goTo('#/model');
    await app.find('heading', 'Beside published numbers');
    await app.page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      expect(await violations(app), `at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`model-${theme}-${width}`);
    }
  });

  it('give the work order and the practice no violation at any width, whatever hands are on', async () => {
    await app.goTo('#/practice/abandon-1in-tee-on-4in-main');
    await app.find('button', 'Begin');
    expect(await violations(app)).toEqual([]);
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    const person = personAt(app);
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      for (const thing of ['Kit board', 'Stopper', 'Records', 'Site']) {
        await person.on(thing);
        expect(await violations(app), `${thing} at ${width}`).toEqual([]);
      }
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`practice-${theme}-${width}`);
    }
    await app.pressByKey('button', 'In words');
    expect(await violations(app)).toEqual([]);
  });

  it('give the debrief no violation at any width', async () => {
    const person = personAt(app);
    await person.on('Stop & refer');
    await app.pressByKey('button', 'Stop work and refer back, because: another reason');
    await app.pressByKey('button', 'Yes');
    await app.pressByKey('link', 'Go to the debrief');
    await app.find('heading', 'Findings');
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      expect(await violations(app), `at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`debrief-${theme}-${width}`);
    }
  });

  it('give the watching and the page of all parts no violation at any width', async () => {
    await app.goTo('#/watch/abandon-1in-tee-on-4in-main');
    await app.pressByKey('button', 'Action after');
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      expect(await violations(app), `at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`watch-${theme}-${width}`);
    }
    await app.goTo('#/parts');
    await app.find('heading', 'All parts in all themes');
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      expect(await violations(app), `at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`parts-${theme}-${width}`);
    }
  });

  it('give the assessment no violation, and the debrief that follows none at any width', async () => {
    await app.goTo('#/practice/abandon-1in-tee-on-6in-main');
    await app.fill('Your name, for the run’s file (an assessment needs it)', 'A. Trainee');
    await app.pressByKey('button', 'Begin the assessment');
    await app.pressByKey('button', 'Pause');
    expect(await violations(app)).toEqual([]);
    await app.screenshot(`assessment-${theme}`);
    await app.pressByKey('button', 'Hand in as it stands');
    expect(await violations(app)).toEqual([]);
    await app.pressByKey('button', 'Hand it in');
    await app.find('link', 'Go to the debrief');
  });
});

describe('the start page while it opens', () => {
  it('shows itself soon and does not shift under the reader’s eyes', async () => {
    const app = await openApp('#/');
    try {
      await app.page.evaluateOnNewDocument(
        `window.shifted = 0; window.largestMs = 0;
         new PerformanceObserver((list) => list.getEntries().forEach((e) => { if (!e.hadRecentInput) window.shifted += e.value; })).observe({ type: 'layout-shift', buffered: true });
         new PerformanceObserver((list) => list.getEntries().forEach((e) => { window.largestMs = e.startTime; })).observe({ type: 'largest-contentful-paint', buffered: true });`,
      );
      await app.reload();
      await app.find('heading', 'Exercises');
      await app.seeText('None yet');
      const [shifted, largestMs] = (await app.page.evaluate('[window.shifted, window.largestMs]')) as [
        number,
        number,
      ];
      console.log(`layout shift ${shifted.toFixed(3)}, largest paint ${largestMs.toFixed(0)} ms`);
      // Our budget, by the usual bounds of web vitals, from memory: shift at most 0.1, largest paint within 2.5 s.
      expect(shifted).toBeLessThanOrEqual(0.1);
      // A time hangs on what else the machine does: judged by `npm run budgets`.
      if (process.env.JUDGE_PAINT === '1') expect(largestMs).toBeLessThanOrEqual(2500);
    } finally {
      await app.close();
    }
  });
});
