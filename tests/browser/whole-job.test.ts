import { afterAll, beforeAll, describe, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { inEnglish } from './tongue.ts';
import { doWholeJob, wholeJobMs } from './whole-job.ts';

describe('the whole job by keyboard, by role and name', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
  });
  afterAll(() => app.close());

  it(
    'is done from the work order to the debrief with nothing but the keys, and passes',
    () => doWholeJob(app, inEnglish),
    wholeJobMs,
  );
});
