import type { App } from './harness.ts';
import type { Way } from './person.ts';

/**
 * A hand with a mouse and nothing else. What turns or slides is dragged on the cutaway, at the ring the picture shows
 * for it; pieces are carried from their cards to the rig; the rest are clicks. Names are those of the keyboard's job.
 */

/** A drag so many pixels across is one turn, as the picture's own words do not say and a hand soon knows. */
const TURN_PX = 420;
/** What a wrench that does not give is pulled by, N·m a pixel. */
const WRENCH_NM_A_PX = 600 / TURN_PX;
/** How far the mouse goes up or down in one stroke, pixels. */
const STROKE_PX = 240;

type Pull =
  | { readonly handle: string; readonly by: 'turn'; readonly turns: number }
  | { readonly handle: string; readonly by: 'slide'; readonly down: boolean; readonly untilStop: boolean }
  | { readonly handle: string; readonly by: 'pump'; readonly strokes: number };

const turnsIn = (text: string): number => {
  const [, whole, over] = /^(\d+)(?:\/(\d+))? turns?/.exec(text) ?? [];
  return Number(whole) / Number(over ?? 1);
};
const lever: Readonly<Record<string, number>> = {
  open: -0.25,
  shut: 0.25,
  fully: 0.25,
  'a quarter of the way': 1 / 16,
  'ease a little': 0.016,
};

/** The drag that does what a button would, or null where only the button does it. */
function pullFor(button: string): Pull | null {
  const [row, what] = button.split(': ');
  const turn = (handle: string, turns: number): Pull => ({ handle, by: 'turn', turns });
  const signed = (back: RegExp): number => (back.test(button) ? -1 : 1) * turnsIn(what);
  if (/tensioner$|bolt$/.test(row)) return turn(row, signed(/slacker$/));
  if (/^(Top plug|Tee), (in|back)$/.test(row))
    return turn(row.startsWith('Tee') ? 'Wrench on the tee' : 'Wrench on the top plug', signed(/, back/));
  if (row.startsWith('Inner rod, ')) return turn('Hand wheel of the inner rod', signed(/slacken/));
  if (row.startsWith('Rod, turn')) return turn('Rod', signed(/counter-clockwise/));
  if (row.startsWith('Isolation valve, '))
    return turn('Valve handle', lever[what] * (row.endsWith('open') ? -1 : 1));
  if (row === 'Bleed' || row === 'Vent') return turn(row, lever[what]);
  if (row.startsWith('Torque wrench'))
    return turn(row, Number.parseFloat(what.slice('pull to '.length)) / WRENCH_NM_A_PX / TURN_PX);
  if (row === 'Hand pump') return { handle: row, by: 'pump', strokes: Number.parseInt(what, 10) };
  if (row === 'Rod down' || row === 'Rod up')
    return { handle: 'Rod', by: 'slide', down: row.endsWith('down'), untilStop: what.startsWith('until') };
  return null;
}

const carries = /^(?:Put on|Fit to the rod|Into the tip): (.+)$/;
const PLACE_OF_HANDLE = "[aria-label='What can be taken hold of'] li";

export function byMouse(app: App): Way & { readonly dragged: ReadonlyMap<string, number> } {
  const { page } = app;
  const { mouse } = page;
  const dragged = new Map<string, number>();

  /** Where the ring of that name is, once the picture has come to rest; null when there is none. */
  async function ringOf(name: string): Promise<{ x: number; y: number } | null> {
    await page
      .waitForSelector("[aria-label='What can be taken hold of'][aria-busy=false]")
      .catch(async () => {
        await app.screenshot('busy');
        throw new Error(`The picture never came to rest for "${name}"`);
      });
    return page.$$eval(
      PLACE_OF_HANDLE,
      (rings, wanted) => {
        const ring = rings.find((one) => one.textContent.startsWith(`${wanted}: `))?.getBoundingClientRect();
        return ring === undefined ? null : { x: ring.x + ring.width / 2, y: ring.y + ring.height / 2 };
      },
      name,
    );
  }

  async function canvas(): Promise<Record<'middle' | 'beside', { x: number; y: number }>> {
    const box = await (await page.waitForSelector('canvas[aria-label^=Cutaway]'))?.boundingBox();
    if (!box) throw new Error('There is no picture.');
    return {
      middle: { x: box.x + box.width / 2, y: box.y + box.height / 2 },
      beside: { x: box.x + 12, y: box.y + 16 },
    };
  }

  /** The ring; if need be from another side (a drag beside the rig) or from farther off (the wheel). */
  async function find(name: string): Promise<{ x: number; y: number }> {
    for (let tries = 0; tries < 9; tries += 1) {
      const at = await ringOf(name);
      if (at !== null) return at;
      const { middle, beside } = await canvas();
      if (/tensioner|bolt/.test(name)) {
        await mouse.move(beside.x, beside.y);
        await mouse.down();
        await mouse.move(beside.x + 70, beside.y);
        await mouse.up();
      } else {
        await mouse.move(middle.x, middle.y);
        await mouse.wheel({ deltaY: 240 });
      }
      await nextFrame();
    }
    await app.screenshot(`not-found-${name}`);
    throw new Error(`Nothing on the picture to take hold of for "${name}"`);
  }

  const nextFrame = (): Promise<void> =>
    page.evaluate(
      () =>
        new Promise<void>((done) => void requestAnimationFrame(() => requestAnimationFrame(() => done()))),
    );

  /** One press, its moves, the release; then what the log's first line is. */
  async function drag(
    from: { x: number; y: number },
    moves: readonly (readonly [number, number])[],
  ): Promise<string> {
    await mouse.move(from.x, from.y);
    await mouse.down();
    for (const [dx, dy] of moves) await mouse.move(from.x + dx, from.y + dy);
    await mouse.up();
    return topLine();
  }

  async function topLine(): Promise<string> {
    await page.waitForFunction(() => document.querySelector('main')?.getAttribute('aria-busy') === 'false');
    return page.evaluate(() => document.querySelector<HTMLElement>('[role=log] p')?.innerText ?? '');
  }

  const refused = (line: string): boolean => line.includes('Not done:');

  async function pull(wanted: Pull): Promise<boolean> {
    dragged.set(wanted.handle, (dragged.get(wanted.handle) ?? 0) + 1);
    let done = false;
    let left = wanted.by === 'turn' ? Math.ceil(Math.abs(wanted.turns) * TURN_PX - 1e-6) : 8;
    while (left > 0) {
      const at = await find(wanted.handle);
      let said: string;
      if (wanted.by === 'turn') {
        const px = Math.min(left, TURN_PX);
        said = await drag(at, [[Math.sign(wanted.turns) * px, 0]]);
        left -= px;
      } else if (wanted.by === 'slide') {
        said = await drag(at, [
          [0, (wanted.down ? 1 : -1) * Math.min(STROKE_PX, wanted.down ? 790 - at.y : at.y - 8)],
        ]);
        left = wanted.untilStop && !/has hold|takes hold/.test(said) ? left - 1 : 0;
      } else {
        said = await drag(
          at,
          Array.from({ length: wanted.strokes }, (_, i) => [0, i % 2 === 0 ? 100 : 0] as const),
        );
        left = 0;
      }
      if (refused(said)) break;
      done = true;
    }
    if (await app.has('button', 'Back to the view')) await app.press('button', 'Back to the view');
    return done;
  }

  /** A card taken by its name and let go over the rig. */
  async function carry(piece: string): Promise<void> {
    const card = await app.find('heading', piece);
    await card.scrollIntoView();
    const box = await card.boundingBox();
    const { middle: rig } = await canvas();
    if (box === null) throw new Error(`The card of ${piece} is out of sight`);
    await mouse.move(box.x + 20, box.y + box.height / 2);
    await mouse.down();
    await mouse.move(rig.x, rig.y, { steps: 3 });
    await mouse.up();
    dragged.set('a card', (dragged.get('a card') ?? 0) + 1);
  }

  return {
    dragged,
    choose: (thing) => app.press('tab', thing),
    async work(button) {
      const piece = carries.exec(button)?.[1];
      const wanted = pullFor(button);
      if (wanted !== null) return pull(wanted);
      if (piece !== undefined) await carry(piece);
      else await app.press('button', button);
      return false;
    },
  };
}
