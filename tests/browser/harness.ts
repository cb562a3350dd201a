import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser, type ElementHandle, type Page } from 'puppeteer-core';
import { findBrowser } from '../../src/setup/browsers.mjs';
import { appFolder } from '../../src/setup/places.mjs';
import { readPort, serveFolder } from '../../src/setup/serve.mjs';

/** How long a condition may take to come true before the test says it did not, ms. Software drawing is slow. */
const patienceMs = 20_000;

const flags = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  '--disable-extensions',
  '--no-first-run',
  '--mute-audio',
  '--force-color-profile=srgb',
];

/** What a person would call a thing: its role and the name a screen reader says. */
export interface Named {
  readonly role: string;
  readonly name: string;
}

/** One browser with the built app, as a person meets it: things are found by role and name, waits are on conditions. */
export interface App {
  readonly page: Page;
  /** Goes to a route such as `#/practice/…`, as if typed into the address bar. */
  goTo(hash: string): Promise<void>;
  /** The one visible thing of that role and name; fails when it does not come to be. */
  find(role: string, name: string): Promise<ElementHandle>;
  /** Waits until the thing can be pressed, then presses it with the mouse. */
  press(role: string, name: string): Promise<void>;
  /** The same by keyboard alone: focus and Enter. */
  pressByKey(role: string, name: string): Promise<void>;
  /** Types into a field after emptying it. */
  fill(name: string, text: string): Promise<void>;
  /** True when such a thing is there now; does not wait. */
  has(role: string, name: string): Promise<boolean>;
  /** Waits until the page shows this text. */
  seeText(text: string | RegExp): Promise<void>;
  /** All visible text of the page, or of one named region. */
  readText(where?: Named): Promise<string>;
  /** Loads the page anew, with its stored data, as after a crash or power loss. */
  reload(): Promise<void>;
  /** Writes a picture into the folder named by SCREENSHOTS; does nothing when that is not set. */
  screenshot(name: string): Promise<void>;
  /** Fails when the page complained since it was opened. */
  expectNoComplaints(): void;
  close(): Promise<void>;
}

export interface OpenOptions {
  /** Another folder than the built app, for the harness's own test. */
  readonly folder?: string;
  readonly width?: number;
  readonly height?: number;
  readonly reducedMotion?: boolean;
  readonly darkTheme?: boolean;
  readonly touch?: boolean;
  /** As on the very first visit, with the guided tour; else it was seen before. */
  readonly firstVisit?: boolean;
}

/** Puppeteer's selector for a role and an accessible name; quotes inside a name are kept. */
const ariaSelector = (role: string, name: string): string =>
  `::-p-aria([name=${JSON.stringify(name)}][role=${JSON.stringify(role)}])`;

/** Everything the page says went wrong, including what it failed to load. */
function collectComplaints(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn')
      complaints.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (reason) =>
    complaints.push(`page: ${reason instanceof Error ? reason.message : String(reason)}`),
  );
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? 'for no reason given';
    // Leaving a page drops what it was still loading; that is no fault of the page.
    if (reason !== 'net::ERR_ABORTED') complaints.push(`not loaded: ${request.url()} ${reason}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  return complaints;
}

async function launchBrowser(dataFolder: string): Promise<Browser> {
  const executablePath = findBrowser('chromium');
  if (executablePath === undefined) throw new Error('Chromium is missing: npm test says how to install it.');
  return puppeteer.launch({ executablePath, headless: true, userDataDir: dataFolder, args: flags });
}

async function preparePage(browser: Browser, options: OpenOptions): Promise<Page> {
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  page.setDefaultTimeout(patienceMs);
  await page.setViewport({
    width: options.width ?? 1280,
    height: options.height ?? 800,
    hasTouch: options.touch ?? false,
  });
  await page.emulateMediaFeatures([
    { name: 'prefers-reduced-motion', value: (options.reducedMotion ?? true) ? 'reduce' : 'no-preference' },
    { name: 'prefers-color-scheme', value: (options.darkTheme ?? false) ? 'dark' : 'light' },
  ]);
  return page;
}

/**
 * Serves the built app on a free port and opens it in a fresh Chromium without stored data.
 * @param hash the route to start on, such as `#/`
 * @throws when the app was not built
 */
export async function openApp(hash = '#/', options: OpenOptions = {}): Promise<App> {
  const folder = options.folder ?? appFolder;
  if (!existsSync(join(folder, 'index.html')))
    throw new Error('The app is not built: run npm run build first.');
  const server = await serveFolder(folder, 0);
  const address = `http://localhost:${readPort(server)}/`;
  const dataFolder = mkdtempSync(join(tmpdir(), 'stillmain-browser-'));
  const browser = await launchBrowser(dataFolder);
  const page = await preparePage(browser, options);
  const complaints = collectComplaints(page);
  if (options.firstVisit !== true)
    await page.evaluateOnNewDocument(
      "try { localStorage['stillmain.preferences'] ??= '{\"toured\":true}'; } catch { /* a page without storage has no tour to have seen */ }",
    );
  await page.goto(address + hash, { waitUntil: 'load' });

  const waitFor = async (role: string, name: string): Promise<ElementHandle> => {
    const found = await page.waitForSelector(ariaSelector(role, name), { visible: true }).catch(() => null);
    if (found === null) throw new Error(`There is no ${role} "${name}" to be seen on ${page.url()}`);
    return found;
  };
  const waitPressable = async (role: string, name: string): Promise<ElementHandle> => {
    const target = await waitFor(role, name);
    await page
      .waitForFunction(
        (node) => !(node as HTMLButtonElement).disabled && node.getAttribute('aria-disabled') !== 'true',
        {},
        target,
      )
      .catch(() => {
        throw new Error(`The ${role} "${name}" is there but cannot be pressed`);
      });
    return target;
  };

  return {
    page,
    async goTo(route) {
      await page.evaluate((next) => window.location.assign(next), route);
    },
    find: waitFor,
    async press(role, name) {
      const target = await waitPressable(role, name);
      await target.scrollIntoView();
      await target.click();
    },
    async pressByKey(role, name) {
      const target = await waitPressable(role, name);
      await target.focus();
      await page.keyboard.press('Enter');
    },
    async fill(name, text) {
      const field = await waitFor('textbox', name);
      await field.click({ count: 3 });
      await page.keyboard.press('Backspace');
      await field.type(text);
    },
    async has(role, name) {
      const found = await page.$(ariaSelector(role, name));
      return found !== null && (await found.isVisible());
    },
    async seeText(text) {
      const [source, marks] = text instanceof RegExp ? [text.source, text.flags] : [undefined, undefined];
      await page
        .waitForFunction(
          (plain, pattern, patternMarks) => {
            const shown = document.body.innerText;
            return pattern === undefined
              ? shown.includes(plain)
              : new RegExp(pattern, patternMarks).test(shown);
          },
          {},
          String(text),
          source,
          marks,
        )
        .catch(() => {
          throw new Error(`The page never showed ${String(text)}`);
        });
    },
    async readText(where) {
      if (where === undefined) return page.evaluate(() => document.body.innerText);
      const region = await waitFor(where.role, where.name);
      return region.evaluate((node) => (node as HTMLElement).innerText);
    },
    async reload() {
      await page.reload({ waitUntil: 'load' });
    },
    async screenshot(name) {
      const folder = process.env.SCREENSHOTS;
      if (folder === undefined || folder === '') return;
      mkdirSync(folder, { recursive: true });
      await page.screenshot({ path: join(folder, `${name}.png`) });
    },
    expectNoComplaints() {
      if (complaints.length > 0) throw new Error(`The page complained:\n${complaints.join('\n')}`);
    },
    async close() {
      await browser.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}
