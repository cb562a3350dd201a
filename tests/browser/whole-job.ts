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
import { personAt, type Person, type Way } from './person.ts';
import type { Tongue } from './tongue.ts';

/** Long: some six hundred presses, or pulls with a mouse. Simulated time moves by the wait buttons only. */
export const wholeJobMs = 600_000;

/** Sets one of the settings as a person does: opens them, chooses, closes them. */
export async function choose(app: App, tongue: Tongue, setting: string, value: string): Promise<void> {
  await app.pressByKey('button', tongue.label('Settings'));
  await (await app.find('combobox', tongue.label(setting))).select(value);
  await app.pressByKey('button', tongue.label('Close'));
}

/** The job from the work order to the debrief: with nothing but the keys and the picture hidden, or by a mouse. It passes. */
export async function doWholeJob(app: App, tongue: Tongue, mouse?: Way): Promise<void> {
  const press = (role: string, name: string): Promise<void> => app.pressByKey(role, tongue.label(name));
  await press('button', 'Begin');
  await press('button', 'Pause');
  await choose(app, tongue, 'Units', 'si');
  if (mouse !== undefined) await choose(app, tongue, 'Picture', 'plain');
  // The words are enough to finish by, and this machine draws slowly; a mouse needs the picture.
  await press('button', mouse === undefined ? 'In words' : 'Picture');
  const person = personAt(app, tongue, mouse);
  const proofs: number[] = [];
  const stages = [
    setUp,
    sealOnTee,
    async (p: Person) => proofs.push(await proveFirst(p)),
    drawPlug,
    lookBore,
    stopBore,
    lockStop,
    partService,
    async (p: Person) => proofs.push(await sealOnCoupling(p)),
    drawTee,
    closeCoupling,
    (p: Person) => handBack(p, [proofs[0], proofs[1]]),
  ];
  for (const [i, stage] of stages.entries()) {
    await stage(person);
    const number = String(i + 1).padStart(2, '0');
    await app.screenshot(`${mouse === undefined ? 'keys' : 'mouse'}-${tongue.language}-s${number}`);
  }
  expect(await person.clock()).toBeGreaterThan(2400);
  await press('link', 'Go to the debrief');
  await app.find('heading', tongue.label('Replay'));
  await app.screenshot(`debrief-${mouse === undefined ? 'keys' : 'mouse'}-${tongue.language}`);
  const said = await app.readText();
  const score = tongue.label('{score} of 100').replace('{score}', '(9\\d|100)([.,]\\d)?');
  expect(said).toMatch(new RegExp(`\\n${score}`));
  const held = said.match(new RegExp(`(?<!\\p{L})${tongue.label('held')}(?!\\p{L})`, 'gu'));
  expect(held).toHaveLength(12);
  expect(said).toContain(tongue.label('This simulator trains. It does not qualify anyone for covered work.'));
  app.expectNoComplaints();
}
