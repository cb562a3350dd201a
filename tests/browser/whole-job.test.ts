import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
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
    'is done from the work order to the look down the bore with nothing but the keys',
    async () => {
      await app.pressByKey('button', 'Begin');
      await app.pressByKey('button', 'Pause');
      await (await app.find('combobox', 'Units')).select('si');
      const person = personAt(app);
      await setUp(person);
      await sealOnTee(person);
      await proveFirst(person);
      await drawPlug(person);
      await lookBore(person);
      await app.screenshot('after-stage-5');
      expect(await person.clock()).toBeGreaterThan(2400);
      app.expectNoComplaints();
    },
    longMs,
  );
});
