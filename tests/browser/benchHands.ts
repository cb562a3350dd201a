import type { App } from './harness.ts';
import { choose } from './deskHands.ts';

/** Goes to a part of the exercise under work. */
export async function goToPart(app: App, name: string): Promise<void> {
  await app.press('link', name);
  await app.find('heading', name);
}

/** Begins a new exercise at a ready site. */
export async function beginExercise(app: App, main: string, tee: string): Promise<void> {
  await choose(app, 'Main, NPS', main);
  await choose(app, 'Service tee, NPS', tee);
  await app.press('button', 'Begin');
  await app.find('heading', 'Order and brief');
}

/** Plants a fault from the pick list. */
export async function plant(app: App, fault: string): Promise<void> {
  await choose(app, 'Fault', fault);
  await app.press('button', 'Plant it');
  await app.find('button', `Take out ${fault}`);
}

/** Hands exercise files to whatever asks for files on this page. */
export async function handOver(app: App, name: string, text: string): Promise<void> {
  const field = await app.page.waitForSelector('input[type=file]');
  await field?.evaluate(
    (input, given) => {
      const all = new DataTransfer();
      all.items.add(new File([given.text], given.name, { type: 'application/json' }));
      input.files = all.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    },
    { name, text },
  );
}

/** Waits until a proof is through and gives its notes back, each in one line. */
export async function proofNotes(app: App): Promise<string[]> {
  await app.page.waitForFunction(
    () => document.querySelector('progress') === null && /Proved:|Not proved:/.test(document.body.innerText),
    { timeout: 80_000 },
  );
  return app.page.evaluate(() =>
    [...document.querySelectorAll('[aria-label="Notes of the proof"] > li')].map((note) =>
      (note as HTMLElement).innerText.replace(/\s+/g, ' '),
    ),
  );
}
