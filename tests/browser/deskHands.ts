import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { App } from './harness.ts';

/** A file handed to the desk. */
export interface HandedFile {
  readonly name: string;
  readonly text: string;
}

/** Hands files to the desk as a person does through the dialog. */
export async function handIn(app: App, files: readonly HandedFile[]): Promise<void> {
  const field = await app.page.waitForSelector('input[type=file][accept]');
  await field?.evaluate((input, given) => {
    const all = new DataTransfer();
    for (const { name, text } of given) all.items.add(new File([text], name, { type: 'application/json' }));
    input.files = all.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  }, files);
}

/** Drops a file on the desk with the mouse. */
export async function drop(app: App, file: HandedFile): Promise<void> {
  const place = await app.find('region', 'Take in more runs');
  await place.evaluate((node, { name, text }) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], name, { type: 'application/json' }));
    node.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer }));
  }, file);
}

/** Loads the invented cohort and waits until all of it is listed. */
export async function loadDemo(app: App): Promise<void> {
  await app.press('button', 'Load 40 demo runs');
  await app.page.waitForFunction(
    () => document.body.innerText.includes('40 of 40 runs') && document.querySelector('progress') === null,
    { timeout: 90_000 },
  );
}

/** Chooses in a labelled list by what is written there. */
export async function choose(app: App, list: string, written: string): Promise<void> {
  const field = await app.find('combobox', list);
  await field.evaluate((node, text) => {
    const select = node as HTMLSelectElement;
    const option = [...select.options].find((one) => one.text.trim() === text);
    if (option === undefined) throw new Error(`"${text}" is not offered`);
    select.value = option.value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
  }, written);
}

/** What the table shows now, row by row, cell by cell. */
export const listed = (app: App): Promise<string[][]> =>
  app.page.evaluate(() =>
    [...document.querySelectorAll('tbody tr[aria-rowindex]')].map((row) =>
      [...row.children].map((cell) => (cell as HTMLElement).innerText),
    ),
  );

/** A folder the browser saves into. */
export async function savingFolder(app: App): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'stillmain-saved-'));
  const session = await app.page.createCDPSession();
  await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  return folder;
}

/** What was saved under a name that ends so. */
export async function saved(folder: string, ending: string): Promise<string> {
  for (let tries = 0; tries < 100; tries += 1) {
    const found = readdirSync(folder).find((name) => name.endsWith(ending));
    if (found !== undefined) return readFileSync(join(folder, found), 'utf8');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`nothing that ends in ${ending} was saved`);
}
