import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import puppeteer from 'puppeteer-core';
import { build } from 'vite';
import { findBrowser } from '../../../src/setup/browsers.mjs';
import { readPort, serveFolder } from '../../../src/setup/serve.mjs';
import type {} from './page.ts';

/** The core and random runs of it in one page, built into a folder of its own. */
export interface EnginePage {
  readonly folder: string;
  remove(): void;
}

/** Builds the page apart from the app, as small and as compiled as the app is. */
export async function buildEnginePage(): Promise<EnginePage> {
  const folder = mkdtempSync(join(tmpdir(), 'stillmain-engines-'));
  await build({
    configFile: false,
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1024 },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** One browser with that page. */
export interface Engine {
  /** Name and version as the browser gives them. */
  readonly version: string;
  readonly jobDigest: string;
  digests(firstSeed: number, count: number): Promise<string[]>;
  close(): Promise<void>;
}

const flags = {
  chromium: ['--no-sandbox', '--disable-dev-shm-usage', '--no-first-run', '--disable-gpu'],
  firefox: [],
};

/** Opens the page in a fresh browser of that name, without a window. */
export async function openEngine(name: 'chromium' | 'firefox', page: EnginePage): Promise<Engine> {
  const executablePath = findBrowser(name);
  if (executablePath === undefined) throw new Error(`${name} is missing: npm test says how to install it.`);
  const server = await serveFolder(page.folder, 0);
  const home = mkdtempSync(join(tmpdir(), `stillmain-${name}-`));
  const browser = await puppeteer.launch({
    browser: name === 'firefox' ? 'firefox' : 'chrome',
    executablePath,
    headless: true,
    userDataDir: join(home, 'profile'),
    args: flags[name],
    // Firefox refuses a home that belongs to somebody else.
    env: { ...process.env, HOME: home },
  });
  const shown = await browser.newPage();
  await shown.goto(`http://localhost:${readPort(server)}/`, { waitUntil: 'load' });
  await shown.waitForFunction(() => window.runs !== undefined, { timeout: 60_000 });
  const jobDigest = await shown.evaluate(() => window.runs?.jobDigest ?? '');
  return {
    version: await browser.version(),
    jobDigest,
    digests: (firstSeed, count) =>
      shown.evaluate((seed, runs) => window.runs?.digests(seed, runs) ?? [], firstSeed, count),
    async close() {
      await browser.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(home, { recursive: true, force: true });
    },
  };
}
