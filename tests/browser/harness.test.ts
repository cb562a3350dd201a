import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';

const pageText = `<!doctype html><html lang="en"><head><title>Yard</title><link rel="icon" href="data:,"></head><body>
<main aria-label="Rig">
  <p id="state">The valve is shut.</p>
  <button id="open" disabled>Open the "main" valve</button>
  <button id="later">Let it be opened</button>
  <button hidden>Cut the tee</button>
  <label>Crew <input id="crew" value="nobody"></label>
  <p id="route"></p>
</main>
<script>
  const by = (id) => document.getElementById(id);
  const showRoute = () => (by('route').textContent = 'Route ' + location.hash);
  by('open').onclick = () => (by('state').textContent = 'The valve is open.');
  by('later').onclick = () => setTimeout(() => (by('open').disabled = false), 50);
  by('crew').oninput = () => (localStorage.crew = by('crew').value);
  if (localStorage.crew) by('crew').value = localStorage.crew;
  addEventListener('hashchange', showRoute);
  showRoute();
</script></body></html>`;

describe('the hands of the browser tests', () => {
  let folder = '';
  let app: App;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'stillmain-yard-'));
    writeFileSync(join(folder, 'index.html'), pageText);
    app = await openApp('#/practice', { folder });
  });
  afterAll(async () => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('find a thing by its role and name, wait until it can be pressed, and press it', async () => {
    await app.seeText('The valve is shut.');
    await app.press('button', 'Let it be opened');
    await app.press('button', 'Open the "main" valve');
    await app.seeText(/valve is (open|ajar)/);
    expect(await app.readText({ role: 'main', name: 'Rig' })).toContain('The valve is open.');
  });

  it('do not see what is hidden or not there', async () => {
    expect(await app.has('button', 'Let it be opened')).toBe(true);
    expect(await app.has('button', 'Cut the tee')).toBe(false);
    expect(await app.has('link', 'Let it be opened')).toBe(false);
  });

  it('follow a route, and keep what was stored over a reload', async () => {
    await app.seeText('Route #/practice');
    await app.goTo('#/debrief/one');
    await app.seeText('Route #/debrief/one');
    await app.fill('Crew', 'crew 4');
    await app.reload();
    expect(
      await (await app.find('textbox', 'Crew')).evaluate((field) => (field as HTMLInputElement).value),
    ).toBe('crew 4');
    app.expectNoComplaints();
  });

  it('pass on what the page complains about', async () => {
    await app.page.evaluate(() => console.error('the gauge is missing'));
    await app.page.evaluate(() => fetch('/nowhere.json').then((answer) => answer.status));
    expect(() => app.expectNoComplaints()).toThrow(/gauge is missing[\s\S]*404/);
  });
});
