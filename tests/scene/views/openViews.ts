import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { openApp, type App } from '../../browser/harness.ts';
import type {} from './page.ts';

/** The fixed views' page in a browser, built apart from the app. */
export async function openViews(): Promise<App> {
  const folder = mkdtempSync(join(tmpdir(), 'stillmain-views-'));
  await build({
    configFile: false,
    root: fileURLToPath(new URL('.', import.meta.url)),
    base: './',
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1024 },
  });
  const app = await openApp('', { folder });
  await app.page.waitForFunction(() => window.views !== undefined);
  const close = app.close.bind(app);
  return {
    ...app,
    close: async () => {
      await close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
