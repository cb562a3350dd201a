import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { byMouse } from './mouse.ts';
import { inEnglish } from './tongue.ts';
import { doWholeJob, wholeJobMs } from './whole-job.ts';

describe('the whole job by mouse on the cutaway', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
  });
  afterAll(() => app.close());

  it(
    'is done from the work order to the debrief by dragging what turns and slides, and passes',
    async () => {
      const mouse = byMouse(app);
      await doWholeJob({ ...app, pressByKey: app.press }, inEnglish, mouse);
      for (const handle of [
        'Chain A, left tensioner',
        'Chain B, right tensioner',
        'Valve handle',
        'Bleed',
        'Vent',
        'Hand pump',
        'Rod',
        'Hand wheel of the inner rod',
        'Wrench on the top plug',
        'Wrench on the tee',
        'Torque wrench on the keeper',
        'Split collar, left bolt',
        'Split collar, right bolt',
        'a card',
      ])
        expect(mouse.dragged.get(handle) ?? 0, handle).toBeGreaterThan(0);
    },
    wholeJobMs,
  );
});
