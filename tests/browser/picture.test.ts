import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, openApp } from './harness.ts';
import { personAt, type Person } from './person.ts';

const cutaway = 'canvas[aria-label^=Cutaway]';

/** How many clearly different colours the picture has, and a sum that changes when it does. */
async function picture(app: App): Promise<{ colours: number; sum: number }> {
  const canvas = await app.page.waitForSelector(cutaway, { visible: true });
  const shot = await canvas?.screenshot({ encoding: 'base64' });
  return app.page.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png ?? ''}`;
    await image.decode();
    const paper = new OffscreenCanvas(image.width, image.height).getContext('2d');
    paper?.drawImage(image, 0, 0);
    const bytes = paper?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray();
    const colours = new Set<number>();
    let sum = 0;
    for (let i = 0; i < bytes.length; i += 4) {
      const colour = ((bytes[i] >> 4) << 8) | ((bytes[i + 1] >> 4) << 4) | (bytes[i + 2] >> 4);
      colours.add(colour);
      sum = (sum * 31 + colour) >>> 0;
    }
    return { colours: colours.size, sum };
  }, shot);
}

describe('the picture', () => {
  let app: App;
  let person: Person;
  beforeAll(async () => {
    app = await openApp('#/practice/abandon-1in-tee-on-4in-main', { width: 1280, height: 800 });
    person = personAt(app);
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.find('combobox', 'View');
  });
  afterAll(() => app.close());

  it('draws the tee in its hole, and draws anew what hands change', async () => {
    await app.page.waitForFunction(
      () => document.querySelector<HTMLCanvasElement>('canvas[aria-label^=Cutaway]')?.width !== 300,
    );
    const before = await picture(app);
    expect(before.colours).toBeGreaterThan(12);
    await person.on('Ring & saddle');
    await person.acts('Put on: Seat ring 1', 'Put on: Saddle');
    const after = await picture(app);
    expect(after.sum).not.toBe(before.sum);
    app.expectNoComplaints();
  });

  it('looks from another side, cut or whole, when asked by keyboard', async () => {
    const before = await picture(app);
    await (await app.find('combobox', 'View')).select('teeAndBore');
    const nearer = await picture(app);
    expect(nearer.sum).not.toBe(before.sum);
    await app.press('checkbox', 'Cut open');
    expect((await picture(app)).sum).not.toBe(nearer.sum);
    await app.press('checkbox', 'Cut open');
  });

  it('stands beside words that say the same, or gives way to them', async () => {
    await app.pressByKey('button', 'Both');
    expect(await app.readText({ role: 'region', name: 'In words' })).toContain('saddle');
    expect(await app.page.$(cutaway)).not.toBeNull();
    await app.pressByKey('button', 'In words');
    expect(await app.page.$(cutaway)).toBeNull();
    await app.pressByKey('button', 'Picture');
    expect((await picture(app)).colours).toBeGreaterThan(12);
    app.expectNoComplaints();
  });

  it('gives way to words while the driver takes it away, and comes back with the work done meanwhile', async () => {
    await app.find('combobox', 'View');
    const driver = await app.page.evaluateHandle((canvas) => {
      const gl = document.querySelector<HTMLCanvasElement>(canvas)?.getContext('webgl2');
      return gl?.getExtension('WEBGL_lose_context');
    }, cutaway);
    const before = await picture(app);
    await app.page.evaluate((held) => held?.loseContext(), driver);
    expect(await app.readText({ role: 'region', name: 'In words' })).toContain('saddle');
    expect(await app.page.$eval(cutaway, (canvas) => (canvas as HTMLElement).offsetParent)).toBeNull();
    await person.act('Take off: Saddle');
    await app.page.evaluate((held) => held?.restoreContext(), driver);
    await app.page.waitForSelector(cutaway, { visible: true });
    const after = await picture(app);
    expect(after.colours).toBeGreaterThan(12);
    expect(after.sum).not.toBe(before.sum);
    app.expectNoComplaints();
  });
});
