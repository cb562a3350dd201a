import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { personAt, readLog } from './person.ts';

const width = 390;
const fingerPx = 44;

describe('kit on a telephone, by finger', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main', { width, height: 844, touch: true });
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await personAt(app).on('Kit board');
  });
  afterAll(() => app.close());

  const middleOf = async (role: string, name: string): Promise<{ x: number; y: number }> => {
    const found = await app.find(role, name);
    const box = await found.boundingBox();
    if (box === null) throw new Error(`${name} has no place on the screen`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };

  it('goes on and off by taps on its buttons', async () => {
    for (const [button, came] of [
      ['Put on: Seat ring 1', /seat ring 1 is in its place/i],
      ['Take off: Seat ring 1', /seat ring 1 is off/i],
    ] as const) {
      await (await app.find('button', button)).evaluate((node) => node.scrollIntoView({ block: 'center' }));
      // The hands are done, and nothing moves any more between measuring and tapping.
      await readLog(app.page);
      await app.page.evaluate(
        () => new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown))),
      );
      const { x, y } = await middleOf('button', button);
      await app.page.touchscreen.tap(x, y);
      await app.page.waitForFunction(
        (pattern) => new RegExp(pattern, 'i').test(document.querySelector('[role=log] p')?.textContent ?? ''),
        {},
        came.source,
      );
    }
  });

  it('is carried from its card to the rig’s name at the foot of the page, with what is in the hand beside the finger', async () => {
    await (
      await app.find('heading', 'Seat ring 1')
    ).evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const card = await middleOf('heading', 'Seat ring 1');
    const rig = await middleOf('button', 'The rig');
    const { touchscreen } = app.page;
    await touchscreen.touchStart(card.x, card.y);
    await touchscreen.touchMove(card.x, card.y + 40);
    await touchscreen.touchMove(rig.x, rig.y);
    expect(await app.page.$eval('.in-hand', (label) => label.textContent)).toBe('Seat ring 1');
    await touchscreen.touchEnd();
    await app.page.waitForSelector('.in-hand', { hidden: true });
    expect((await readLog(app.page))[0]).toMatch(/seat ring 1 is in its place/i);
  });

  it('stays on the board where it is let go anywhere else', async () => {
    await (await app.find('heading', 'Saddle')).evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const card = await middleOf('heading', 'Saddle');
    const { touchscreen } = app.page;
    await touchscreen.touchStart(card.x, card.y);
    await touchscreen.touchMove(card.x, card.y + 60);
    await touchscreen.touchEnd();
    expect((await readLog(app.page))[0]).toMatch(/seat ring 1 is in its place/i);
  });

  it('and everything else there gives a finger its 44 px', async () => {
    const small = await app.page.evaluate(
      (least) =>
        [...document.querySelectorAll('button, select, summary, [role=tab], label:has(> input), a.button')]
          .filter(
            (one) => one.checkVisibility({ visibilityProperty: true }) && one.closest('.apart') === null,
          )
          .map((one) => ({
            text: one.textContent?.trim().slice(0, 30),
            px: one.getBoundingClientRect().height,
          }))
          .filter(({ px }) => px > 0 && px < least - 0.5),
      fingerPx,
    );
    expect(small).toEqual([]);
    app.expectNoComplaints();
  });
});
