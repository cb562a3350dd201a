import { expect } from 'vitest';
import type { App } from './harness.ts';
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
import type { Tongue } from './tongue.ts';

/** Long: some six hundred presses by keyboard. Simulated time moves by the wait buttons only. */
export const wholeJobMs = 600_000;

/** Sets one of the settings as a person does: opens them, chooses, closes them. */
export async function choose(app: App, tongue: Tongue, setting: string, value: string): Promise<void> {
  await app.pressByKey('button', tongue.label('Settings'));
  await (await app.find('combobox', tongue.label(setting))).select(value);
  await app.pressByKey('button', tongue.label('Close'));
}

/** The job from the work order to the debrief with nothing but the keys and the picture hidden; it passes. */
export async function doWholeJob(app: App, tongue: Tongue): Promise<void> {
  const press = (role: string, name: string): Promise<void> => app.pressByKey(role, tongue.label(name));
  await press('button', 'Begin');
  await press('button', 'Pause');
  await choose(app, tongue, 'Units', 'si');
  // The words are enough to finish by, and this machine draws slowly.
  await press('button', 'In words');
  const person = personAt(app, tongue);
  await setUp(person);
  await sealOnTee(person);
  const first = await proveFirst(person);
  await drawPlug(person);
  await lookBore(person);
  await app.screenshot(`after-stage-5-${tongue.language}`);
  await stopBore(person);
  await lockStop(person);
  await partService(person);
  const second = await sealOnCoupling(person);
  await drawTee(person);
  await closeCoupling(person);
  await handBack(person, [first, second]);
  await app.screenshot(`after-stage-12-${tongue.language}`);
  expect(await person.clock()).toBeGreaterThan(2400);
  await press('link', 'Go to the debrief');
  await app.find('heading', tongue.label('Replay'));
  await app.screenshot(`debrief-${tongue.language}`);
  const said = await app.readText();
  const score = tongue.label('{score} of 100').replace('{score}', '(9\\d|100)([.,]\\d)?');
  expect(said).toMatch(new RegExp(`\\n${score}`));
  const held = said.match(new RegExp(`(?<!\\p{L})${tongue.label('held')}(?!\\p{L})`, 'gu'));
  expect(held).toHaveLength(12);
  expect(said).toContain(tongue.label('This simulator trains. It does not qualify anyone for covered work.'));
  app.expectNoComplaints();
}
