import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { inEnglish, inSpanish } from './tongue.ts';
import { doWholeJob, wholeJobMs } from './whole-job.ts';

describe('the whole job in Spanish', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/');
  });
  afterAll(() => app.close());

  it('begins with the start page turning Spanish where it stands, exercise and all', async () => {
    await app.find('heading', 'Exercises');
    await app.pressByKey('button', 'Settings');
    await (await app.find('combobox', 'Language')).select('es');
    // While the settings are open nothing behind them can be reached.
    await app.pressByKey('button', inSpanish.label('Close'));
    await app.find('heading', inSpanish.label('Exercises'));
    expect(await app.page.evaluate(() => document.documentElement.lang)).toBe('es');
    expect(await app.readText()).toContain('Abandonar una te de servicio de 1 in');
    await app.screenshot('home-es');
  });

  it(
    'is done by the same script, with every label looked up in the catalogues, and passes',
    async () => {
      await app.goTo('#/practice/abandon-1in-tee-on-4in-main');
      await doWholeJob(app, inSpanish);
    },
    wholeJobMs,
  );

  it('turns back to English where it stands, after a reload too', async () => {
    await app.reload();
    await app.find('heading', inSpanish.label('Replay'));
    await app.pressByKey('button', inSpanish.label('Settings'));
    await (await app.find('combobox', inSpanish.label('Language'))).select('en');
    await app.pressByKey('button', inEnglish.label('Close'));
    await app.find('heading', inEnglish.label('Replay'));
    app.expectNoComplaints();
  });
});
