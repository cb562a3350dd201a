import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { gatheredChecksFile } from '../../src/setup/places.mjs';
import { type App, openApp } from './harness.ts';

/** What the published checks left, as the build gathered it. */
const { published } = JSON.parse(readFileSync(gatheredChecksFile, 'utf8')) as {
  published: { document: string; rows: unknown[] }[];
};
const count = published.reduce((sum, table) => sum + table.rows.length, 0);
const documents = new Set(published.map((table) => table.document)).size;

describe('the page about the model', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/');
  });
  afterAll(() => app.close());

  it('is found from the start page, and tells every comparison that was made', async () => {
    await app.pressByKey('link', 'How the gas is modelled, beside published numbers, and where that stops');
    await app.find('heading', 'Beside published numbers');
    await app.seeText(`${count} comparisons with ${documents} sources`);
    expect(count).toBeGreaterThan(400);
    const rows = await app.page.$$eval('details tbody tr', (found) => found.length);
    expect(rows).toBeGreaterThan(count);
  });

  it('has every figure of its prose from the run that built it', async () => {
    const prose = await app.page.$$eval('section[aria-labelledby="model"] p', (found) =>
      found.map((one) => one.textContent).join(' '),
    );
    expect(prose).toMatch(/would end after 17\.\d+ s instead of 21\.\d+ s/);
    expect(prose).toMatch(/no opening took more than \d+ steps/);
    expect(prose).toMatch(/off by 0\.\d+ % at most from itself/);
    expect(prose).not.toMatch(/–\s|NaN|\{/);
  });

  it('can be reloaded and read in Spanish', async () => {
    await app.reload();
    await app.find('heading', 'Limits and assumptions');
    await app.pressByKey('button', 'Settings');
    await (await app.find('combobox', 'Language')).select('es');
    await app.seeText('Límites y supuestos');
    app.expectNoComplaints();
  });
});
