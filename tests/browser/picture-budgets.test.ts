import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { viewsOfMoments } from '../scene/views/moments.ts';
import { openViews } from '../scene/views/openViews.ts';
import type { App } from './harness.ts';

/**
 * Budgets of this project for the picture (assumed by us, no outside source): what a training room's oldest machine
 * draws without a graphics card. Time is script's share of a frame, not the drawing by the GPU or its stand-in.
 */
const budget = { calls: 80, triangles: 80_000, scriptMs: 4, idleFrames: 0 };

describe('the picture keeps its budgets', () => {
  let app: App;
  const views = viewsOfMoments();
  const fullest = views.get('plug-drawn');
  beforeAll(async () => {
    app = await openViews();
  });
  afterAll(() => app.close());

  it('in draw calls and triangles at every kept moment, in the default view', async () => {
    let [calls, triangles] = [0, 0];
    for (const view of views.values()) {
      const seen = await app.page.evaluate(
        (drawn) => window.views?.draw(drawn, 'followTheWork', 160, 120),
        view,
      );
      calls = Math.max(calls, seen?.calls ?? Infinity);
      triangles = Math.max(triangles, seen?.triangles ?? Infinity);
    }
    console.log(`picture: at most ${calls} draw calls, ${triangles} triangles`);
    expect(calls).toBeLessThanOrEqual(budget.calls);
    expect(triangles).toBeLessThanOrEqual(budget.triangles);
  });

  it('in script per frame while it is turned, the whole rig standing', async () => {
    const scriptMs = await app.page.evaluate(
      (view) => (view ? window.views?.frameMs(view, 'wholeRig', 30) : undefined),
      fullest,
    );
    console.log(`picture: ${scriptMs?.toFixed(2) ?? 'no'} ms of script a frame`);
    expect(scriptMs).toBeLessThanOrEqual(budget.scriptMs);
  });

  it('in frames drawn while nothing changes: none', async () => {
    const drawn = await app.page.evaluate(
      (view) => (view ? window.views?.idleFrames(view, 1500) : undefined),
      fullest,
    );
    console.log(`picture: ${drawn ?? 'no'} frames in 1.5 s at rest`);
    expect(drawn).toBe(budget.idleFrames);
  });
});
