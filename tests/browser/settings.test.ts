import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { personAt } from './person.ts';
import { inEnglish } from './tongue.ts';
import { choose } from './whole-job.ts';

/** WCAG 2.2 A and AA by axe-core, an independent judge; it finds what a machine can find and no more. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

async function violations(app: App): Promise<string[]> {
  await app.page.evaluate(() => {
    for (const bar of document.querySelectorAll<HTMLElement>('body *'))
      if (getComputedStyle(bar).position === 'sticky') bar.style.position = 'static';
  });
  await app.page.evaluate(axe);
  return (await app.page.evaluate(
    'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then((r) => r.violations.map((v) => v.id + ": " + v.nodes.slice(0, 4).map((n) => n.target.join(" ")).join(", ")))',
  )) as string[];
}

const spillsSideways = (app: App): Promise<boolean> =>
  app.page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth + 1);
const rootStyle = (app: App, name: string): Promise<string> =>
  app.page.evaluate(
    (property) => getComputedStyle(document.documentElement).getPropertyValue(property),
    name,
  );
/** Waits until the page under test has a state, given as an expression in it. */
const until = (app: App, expression: string): Promise<unknown> => app.page.waitForFunction(expression);

describe('the settings', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.pressByKey('button', 'In words');
  });
  afterAll(() => app.close());
  const set = (setting: string, value: string): Promise<void> => choose(app, inEnglish, setting, value);

  it.each(['light', 'dark', 'contrast'])(
    'give the open settings, the sheet and the workplace no violation in the %s theme',
    async (theme) => {
      await set('Theme', theme);
      expect(await violations(app)).toEqual([]);
      await app.pressByKey('button', 'Settings');
      await app.find('combobox', 'Theme');
      expect(await violations(app)).toEqual([]);
      await app.screenshot(`settings-${theme}`);
      await app.pressByKey('button', 'Close');
      await app.pressByKey('button', 'Shortcuts');
      await app.find('heading', 'Shortcuts');
      expect(await violations(app)).toEqual([]);
      await app.pressByKey('button', 'Close');
    },
  );

  it('paint high contrast white on black', async () => {
    await set('Theme', 'contrast');
    expect(await rootStyle(app, 'background-color')).toBe('rgb(0, 0, 0)');
    expect(await rootStyle(app, 'color')).toBe('rgb(255, 255, 255)');
  });

  it('keep what is pressed to be told from what is not in forced colours', async () => {
    const session = await app.page.createCDPSession();
    await session.send('Emulation.setEmulatedMedia', {
      features: [{ name: 'forced-colors', value: 'active' }],
    });
    const colours = await app.page.evaluate(() =>
      ['true', 'false'].map((pressed) => {
        const button = document.querySelector(`.ways [aria-pressed=${pressed}]`);
        return button === null ? '' : getComputedStyle(button).backgroundColor;
      }),
    );
    expect(colours[0]).not.toBe('');
    expect(colours[0]).not.toBe(colours[1]);
    await session.send('Emulation.setEmulatedMedia', { features: [] });
  });

  it('make text half as large again without a page that scrolls sideways', async () => {
    await set('Text size', '150');
    expect(await rootStyle(app, 'font-size')).toBe('24px');
    for (const width of [390, 1280]) {
      await app.page.setViewport({ width, height: 900 });
      expect(await spillsSideways(app), `at ${width}`).toBe(false);
      await app.screenshot(`text-150-${width}`);
    }
    await set('Text size', '100');
  });

  it('let movement be chosen against what the system asks for', async () => {
    await set('Movement', 'full');
    await until(app, 'document.documentElement.dataset.motion === "full"');
    await set('Movement', 'system');
    await until(app, 'document.documentElement.dataset.motion === "less"');
  });

  it('are kept for the next visit', async () => {
    await set('Theme', 'dark');
    await set('Units', 'si');
    await app.reload();
    await app.find('heading', 'Hands');
    expect(await app.page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark');
    expect(await app.readText()).toContain('kPa');
  });
});

describe('what is heard and told', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.pressByKey('button', 'In words');
  });
  afterAll(() => app.close());

  it('captions a sound with what it is, how strong and from where', async () => {
    const person = personAt(app);
    await person.on('Valve & spools');
    await person.on('Chains');
    await person.act('Put on: Chain no. 1');
    await person.on('Tee');
    await person.attempt('Trim the tee: file the edges');
    await person.on('Branch');
    await person.act('Branch: open a pilot hole');
    await app.seeText('hand saw, clear, right');
    await app.seeText(/gas blowing in the hole, (clear|loud), below/);
  });

  it('tells an alarm at once, over the log', async () => {
    const person = personAt(app);
    await person.acts('Wait 1 min', 'Wait 1 min');
    const alerts = await app.page.evaluate(() =>
      [...document.querySelectorAll('[role=alert]')].map((one) => one.textContent).join(' '),
    );
    expect(alerts).toMatch(/gas alarm sounds|is above the lower limit/);
    const flashS = await app.page.evaluate(() => {
      document.documentElement.dataset.motion = 'full';
      const face = document.querySelector('[class*=alarm-] .face');
      return face === null ? 0 : parseFloat(getComputedStyle(face).animationDuration);
    });
    // WCAG 2.3.1: no more than three flashes in a second (from memory).
    expect(flashS).toBeGreaterThanOrEqual(1 / 3);
  });

  it('plays nothing before a press, and opens the device after one', async () => {
    await app.page.evaluate(() => {
      localStorage.setItem('stillmain.preferences', '{"sound":true,"rig":"words"}');
    });
    await app.page.evaluateOnNewDocument(
      'window.opened = 0; window.AudioContext = class extends AudioContext { constructor() { super(); window.opened += 1; } };',
    );
    await app.reload();
    await app.find('heading', 'Hands');
    await until(app, 'document.querySelector("main")?.getAttribute("aria-busy") === "false"');
    expect(await app.page.evaluate('window.opened')).toBe(0);
    await app.page.keyboard.press('l');
    await until(app, 'window.opened === 1');
    app.expectNoComplaints();
  });
});

describe('shortcuts', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main');
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.pressByKey('button', 'In words');
  });
  afterAll(() => app.close());

  it('list themselves at ?, and leave letters that are typed alone', async () => {
    await app.page.keyboard.press('?');
    await app.find('heading', 'Shortcuts');
    await app.pressByKey('button', 'Close');
    const person = personAt(app);
    await person.on('Records');
    const before = await person.clock();
    await app.fill('employee responsible, and crew', 'wwmm');
    expect(await person.clock()).toBe(before);
  });

  it('do the common acts', async () => {
    const person = personAt(app);
    await person.on('Site');
    const before = await person.clock();
    await app.page.keyboard.press('w');
    await app.page.waitForFunction(
      (then) => {
        const [h, m, s] = (document.querySelector('[aria-label=Clock] time')?.textContent ?? '')
          .split(':')
          .map(Number);
        return h * 3600 + m * 60 + s >= then + 10;
      },
      {},
      before,
    );
    await app.page.keyboard.press('l');
    await app.seeText('Nothing can be heard above the street.');
    await app.page.keyboard.press('n');
    await until(app, 'document.activeElement?.getAttribute("role") === "tab"');
  });

  it('can be turned off', async () => {
    await app.pressByKey('button', 'Settings');
    await app.press('checkbox', 'Single-key shortcuts');
    await app.pressByKey('button', 'Close');
    await app.page.keyboard.press('?');
    expect(await app.has('heading', 'Shortcuts')).toBe(false);
    app.expectNoComplaints();
  });
});
