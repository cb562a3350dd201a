import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { App } from './harness.ts';

/** WCAG 2.2 A and AA by axe-core, an independent judge; it finds what a machine can find and no more. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds against the page as it stands, with the first places of each. */
export async function violations(app: App): Promise<readonly object[]> {
  // Bars that stay at the edges cover a part of whatever is scrolled there; they are judged where they stand in the page.
  // What is left undrawn while it is off the screen stands in a box of a guessed height; it is judged drawn.
  await app.page.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLElement>('body *')) {
      const { position, contentVisibility } = getComputedStyle(part);
      if (position === 'sticky') part.style.position = 'static';
      if (contentVisibility === 'auto') part.style.contentVisibility = 'visible';
    }
  });
  await app.page.evaluate(axe);
  const found = await app.page.evaluate(
    'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then((r) => r.violations.map((v) => ({ id: v.id, help: v.help, targets: v.nodes.slice(0, 5).map((n) => n.target.join(" ") + " " + (n.failureSummary ?? "").split("\\n")[1]) })))',
  );
  return found as readonly object[];
}

/** Whether the page scrolls sideways: it may scroll up and down but never that way. */
export const spillsSideways = (app: App): Promise<boolean> =>
  app.page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth + 1);
