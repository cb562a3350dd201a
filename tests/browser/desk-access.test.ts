import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { spillsSideways, violations } from './axe.ts';
import { choose, loadDemo } from './deskHands.ts';
import { type App, openApp } from './harness.ts';

const widths = [390, 820, 1280, 1920] as const;
const pages = [
  ['rejudge', 'Judge the folder again'],
  ['keeping', 'Keeping and letting go'],
  ['proof', 'What a counter-signature proves'],
  ['group', 'The group'],
] as const;

describe.each(['light', 'dark', 'contrast'] as const)('the desk in the %s theme', (theme) => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/desk', { darkTheme: theme === 'dark' });
    if (theme === 'contrast') {
      await app.pressByKey('button', 'Settings');
      await choose(app, 'Theme', 'High contrast');
      await app.pressByKey('button', 'Close');
    }
  });
  afterAll(() => app.close());

  async function expectNone(name: string): Promise<void> {
    for (const width of widths) {
      await app.page.setViewport({ width, height: 900 });
      expect(await violations(app), `${name} at ${width}`).toEqual([]);
      expect(await spillsSideways(app), `${name} at ${width}`).toBe(false);
      await app.screenshot(`desk-${name}-${theme}-${width}`);
    }
  }

  it('has no violation where it is empty and where it holds runs, at any width', async () => {
    await app.find('heading', 'The desk is empty');
    await expectNone('empty');
    await loadDemo(app);
    await choose(app, 'Group by', 'person');
    await expectNone('table');
  });

  it('has none on the page of one run, whatever of it is looked at', async () => {
    await choose(app, 'Verdict', 'Critical');
    const link = await app.page.waitForSelector('tbody a');
    await link?.click();
    await app.find('heading', 'Replay');
    await app.pressByKey('button', 'In words');
    await expectNone('run');
    for (const tab of ['Findings', 'In words', 'Notes', 'Compare', 'Decision']) {
      await app.pressByKey('tab', tab);
      expect(await violations(app), tab).toEqual([]);
    }
  });

  it.each(pages)('has none on the page %s', async (page, heading) => {
    await app.goTo(`#/desk/${page}`);
    await app.find('heading', heading);
    await expectNone(page);
  });
});
