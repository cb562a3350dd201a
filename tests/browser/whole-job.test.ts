import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import {
  closeCoupling,
  drawTee,
  handBack,
  lockStop,
  partService,
  sealOnCoupling,
  stopBore,
} from './job-later.ts';
import { drawPlug, lookBore, proveFirst, sealOnTee, setUp } from './job.ts';
import { personAt } from './person.ts';

/** Long: some six hundred presses by keyboard. Simulated time moves by the wait buttons only. */
const longMs = 600_000;

describe('the whole job by keyboard, by role and name', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
  });
  afterAll(() => app.close());

  it(
    'is done from the work order to the debrief with nothing but the keys, and passes',
    async () => {
      await app.pressByKey('button', 'Begin');
      await app.pressByKey('button', 'Pause');
      await (await app.find('combobox', 'Units')).select('si');
      // The words are enough to finish by, and this machine draws slowly.
      await app.pressByKey('button', 'In words');
      const person = personAt(app);
      await setUp(person);
      await sealOnTee(person);
      const first = await proveFirst(person);
      await drawPlug(person);
      await lookBore(person);
      await app.screenshot('after-stage-5');
      await stopBore(person);
      await lockStop(person);
      await partService(person);
      const second = await sealOnCoupling(person);
      await drawTee(person);
      await closeCoupling(person);
      await handBack(person, [first, second]);
      await app.screenshot('after-stage-12');
      expect(await person.clock()).toBeGreaterThan(2400);
      await app.pressByKey('link', 'Go to the debrief');
      await app.find('heading', 'Replay');
      await app.screenshot('debrief');
      const said = await app.readText();
      expect(said).toMatch(/\n(9\d|100)(\.\d)? of 100/);
      expect(said.match(/\bheld\b/g)).toHaveLength(12);
      expect(said).toContain('It does not qualify anyone');
      app.expectNoComplaints();
    },
    longMs,
  );
});
