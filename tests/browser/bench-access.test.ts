import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { spillsSideways, violations } from './axe.ts';
import { beginExercise, goToPart, plant } from './benchHands.ts';
import { choose } from './deskHands.ts';
import { type App, openApp } from './harness.ts';

const widths = [390, 820, 1280] as const;
const parts = [
  'Order and brief',
  'Workpiece',
  'Gas system',
  'Site',
  'Kit board',
  'Faults',
  'Hold points',
  'Limits of evidence',
  'Scoring',
  'Notes for the instructor',
  'Prove',
  'Try it',
] as const;

describe.each(['light', 'dark'] as const)('the bench in the %s theme', (theme) => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/bench', { darkTheme: theme === 'dark' });
  });
  afterAll(() => app.close());

  async function expectNone(name: string): Promise<void> {
    for (const width of theme === 'light' ? widths : ([1280] as const)) {
      await app.page.setViewport({ width, height: 900 });
      expect.soft(await violations(app), `${name} at ${width}`).toEqual([]);
      expect.soft(await spillsSideways(app), `${name} at ${width}`).toBe(false);
      await app.screenshot(`bench-${name.replaceAll(' ', '-')}-${theme}-${width}`);
    }
  }

  it('has no violation on its shelf, empty and with an exercise on it', async () => {
    await app.find('button', 'Begin');
    await expectNone('empty shelf');
    await beginExercise(app, '2', '1-1/4');
    await app.press('link', 'Back to the shelf');
    await app.find('link', 'Edit Abandon a 1-1/4-inch service tee on a live 2-inch main');
    await expectNone('shelf');
  });

  it('has none on any part of an exercise with a fault and an error in it', async () => {
    await app.press('link', 'Edit Abandon a 1-1/4-inch service tee on a live 2-inch main');
    await goToPart(app, 'Faults');
    await plant(app, 'A seat ring whose stamp lies');
    await plant(app, 'Another gas leak near by');
    await goToPart(app, 'Gas system');
    await choose(app, 'The main', 'moves by a schedule');
    for (const part of parts) {
      await app.pressByKey('link', part);
      await app.find('heading', part);
      await expectNone(part);
    }
  });
});
