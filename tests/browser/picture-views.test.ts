import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SceneView, ViewName } from '../../src/scene/index.ts';
import { moments, viewsOfMoments } from '../scene/views/moments.ts';
import { openViews } from '../scene/views/openViews.ts';
import type { Seen } from '../scene/views/page.ts';
import type { App } from './harness.ts';

/**
 * Eight views of one job, drawn in the plain tier and held against pictures kept beside them (`tests/scene/views`).
 * Set KEEP_VIEWS=1 to keep new ones, after having looked at them.
 */
const SIZE = { width: 280, height: 210 };
const MOST_DIFFERING = 0.005;
const MOST_BYTES = 40 * 1024;
/** Least share of the picture that is hatched section, where the view is cut (measured, less a third). */
const leastCut: Readonly<Record<string, number>> = {
  'as-found': 0.019,
  'first-proof': 0.03,
  'plug-drawn': 0.16,
  'stopper-squeezed': 0.06,
  'coupling-closed': 0.026,
};

const fileOf = (name: string): string =>
  fileURLToPath(new URL(`../scene/views/${name}.png`, import.meta.url));

describe('eight views of one job', () => {
  let app: App;
  const views = viewsOfMoments();
  beforeAll(async () => {
    app = await openViews();
  });
  afterAll(() => app.close());

  const draw = (view: SceneView, name: ViewName): Promise<Seen> =>
    app.page.evaluate(
      async (drawn, how, size) => {
        if (!window.views) throw new Error('The page offers no views.');
        return window.views.draw(drawn, how, size.width, size.height);
      },
      view,
      name,
      SIZE,
    );

  it.each(moments)('$file, seen by $view, is drawn as it was', async ({ file, view: name }) => {
    const view = views.get(file);
    if (!view) throw new Error(`The job never came to ${file}.`);
    const seen = await draw(view, name);
    expect(seen.deviation, 'not blank').toBeGreaterThan(12);
    expect(seen.cut).toBeGreaterThanOrEqual(leastCut[file] ?? 0);
    // Where bodies alone say that metal is cut, the picture shows that stuff's section, but for edges and dots of gas.
    expect(seen.agreeing).toBeGreaterThan(0.93);
    console.log(
      `${file}: deviation ${seen.deviation.toFixed(1)}, section ${(100 * seen.cut).toFixed(1)} %, agreeing ${(100 * seen.agreeing).toFixed(1)} %`,
    );
    const bytes = Buffer.from(seen.png, 'base64');
    expect(bytes.length).toBeLessThanOrEqual(MOST_BYTES);
    if (process.env.KEEP_VIEWS === '1') writeFileSync(fileOf(file), bytes);
    expect(existsSync(fileOf(file))).toBe(true);
    const kept = readFileSync(fileOf(file)).toString('base64');
    const share = await app.page.evaluate((a, b) => window.views?.differing(a, b) ?? 1, seen.png, kept);
    expect(share).toBeLessThanOrEqual(MOST_DIFFERING);
    app.expectNoComplaints();
  });

  it('would notice a ball turned by 12 degrees, and a picture of something else', async () => {
    const view = views.get('plug-drawn');
    if (!view) throw new Error('The job never came to it.');
    const turned = {
      ...view,
      items: view.items.map((i) => ({
        ...i,
        joints: { ...i.joints, valveRad: (i.joints.valveRad ?? 0) - 0.21 },
      })),
    };
    const [was, is] = [await draw(view, 'stack'), await draw(turned, 'stack')];
    const share = await app.page.evaluate((a, b) => window.views?.differing(a, b) ?? 0, was.png, is.png);
    expect(share).toBeGreaterThan(MOST_DIFFERING);
  });
});
