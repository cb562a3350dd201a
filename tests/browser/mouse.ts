import type { App } from './harness.ts';
import { readLog, type Way } from './person.ts';

/**
 * A hand with a mouse and nothing else. What turns or slides is dragged on the cutaway, at the ring the picture shows
 * for it; pieces are carried from their cards to the rig; the rest are clicks. Names are those of the keyboard's job.
 */

/** A drag so many pixels across is one turn, as the picture's own words do not say and a hand soon knows. */
const TURN_PX = 420;
/** What a wrench that does not give is pulled by, N·m a pixel. */
const WRENCH_NM_A_PX = 600 / TURN_PX;
/** The farthest one drag goes: over the picture's edge and back, as a hand that keeps hold may. */
const MOST_PX = 3 * TURN_PX;
/** How far the mouse goes up or down in one stroke, pixels. */
const STROKE_PX = 240;

/** Longest leg of a stroke with the pump, pixels. */
const MOST_LEG_PX = 160;

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
interface Point {
  readonly x: number;
  readonly y: number;
}

export function byMouse(app: App): Way & { readonly dragged: ReadonlyMap<string, number> } {
  const { page } = app;
  const { mouse } = page;
  const dragged = new Map<string, number>();
  /** So many pixels down or up are a stroke of the pump; how many depends on how near the eye is, and a hand learns it. */
  let strokePx = 16;
  /** The ring of that name once the picture has come to rest, with the canvas it is on; null when there is none. */
  const look = (name: string): Promise<{ ring: Point | null; canvas: DOMRect }> =>
    page.evaluate(async (wanted) => {
      const list = (): Element | null =>
        document.querySelector("[aria-label='What can be taken hold of'][aria-busy=false]");
      const busy = (): boolean => document.querySelector('main')?.getAttribute('aria-busy') !== 'false';
      const fromMs = performance.now();
      while (busy() || list() === null) {
        if (performance.now() - fromMs > 20_000)
          throw new Error(`The picture never came to rest for "${wanted}"`);
        await new Promise((resolve) => setTimeout(resolve, 10));
      }
      const canvas = document.querySelector('canvas[aria-label^=Cutaway]')?.getBoundingClientRect().toJSON();
      const ring = [...(list()?.children ?? [])]
        .find((one) => one.textContent.startsWith(`${wanted}: `))
        ?.getBoundingClientRect();
      return {
        ring: ring === undefined ? null : { x: ring.x + ring.width / 2, y: ring.y + ring.height / 2 },
        canvas: canvas as DOMRect,
      };
    }, name);

  /** Where the picture is looked at from: the work as it comes, one of the other views, or turned by hand. */
  let stand: 'followTheWork' | 'holeFromAbove' | 'turned' = 'followTheWork';

  async function standAt(view: 'followTheWork' | 'holeFromAbove'): Promise<void> {
    if (stand === 'turned') await press('button', 'Back to the view');
    await (await app.find('combobox', 'View')).select(view);
    stand = view;
  }

  /** The ring; where it is not in sight from another view, from another side (a drag beside the rig), or from farther off. */
  async function find(name: string): Promise<Point> {
    const allRound = /tensioner|bolt/.test(name);
    for (let tries = 0; tries < 12; tries += 1) {
      const { ring, canvas } = await look(name);
      if (ring !== null) return ring;
      if (tries === 0 && stand !== 'followTheWork' && !allRound) await standAt('followTheWork');
      else if (tries === 0 && stand === 'followTheWork' && allRound) await standAt('holeFromAbove');
      else if (tries === 1 && stand !== 'followTheWork') await standAt('followTheWork');
      else if (allRound) await drag({ x: canvas.x + 12, y: canvas.y + 16 }, [[canvas.height / 6, 0]]);
      else {
        await mouse.move(canvas.x + canvas.width / 2, canvas.y + canvas.height / 2);
        await mouse.wheel({ deltaY: 240 });
      }
      if (tries > 1) stand = 'turned';
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

  /** One press, its moves, the release. */
  async function drag(from: Point, moves: readonly (readonly [number, number])[]): Promise<void> {
    await mouse.move(from.x, from.y);
    await mouse.down();
    for (const [dx, dy] of moves) await mouse.move(from.x + dx, from.y + dy);
    await mouse.up();
  }

  /** What the log says first, once the hands are done. */
  const topLine = async (): Promise<string> => (await readLog(page))[0] ?? '';

  /** By how much a stroke was taken too short or too long in this view, from what the log says came of one. */
  const learned = (said: string): number => {
    const [, more] = / (\d+) strokes /.exec(said) ?? [];
    if (more !== undefined) return 1.5 / (Number(more) + 0.5);
    return said.includes(' one stroke ') ? 1 : 1.3;
  };

  const refused = (line: string): boolean => line.includes('Not done:');

  async function pull(wanted: Pull): Promise<boolean> {
    dragged.set(wanted.handle, (dragged.get(wanted.handle) ?? 0) + 1);
    let done = false;
    let left = wanted.by === 'turn' ? Math.ceil(Math.abs(wanted.turns) * TURN_PX - 1e-6) : 8;
    while (left > 0) {
      const at = await find(wanted.handle);
      if (wanted.by === 'turn') {
        const px = Math.min(left, MOST_PX);
        await drag(at, [[Math.sign(wanted.turns) * px, 0]]);
        left -= px;
      } else if (wanted.by === 'slide') {
        await drag(at, [[0, wanted.down ? STROKE_PX : -STROKE_PX]]);
      } else {
        const lengthPx = wanted.strokes * strokePx * 1.05;
        const legs = Math.ceil(lengthPx / MOST_LEG_PX);
        const downUp = (_: unknown, i: number) => [0, i % 2 === 0 ? lengthPx / legs : 0] as const;
        await drag(at, Array.from({ length: legs }, downUp));
        left = 0;
      }
      const said = await topLine();
      if (wanted.by === 'pump' && wanted.strokes === 1) strokePx *= learned(said);
      if (wanted.by === 'slide') left = wanted.untilStop && !/has hold|takes hold/.test(said) ? left - 1 : 0;
      if (refused(said)) break;
      done = true;
    }
    return done;
  }

  /** A card taken by its name and let go over the rig. */
  async function carry(piece: string): Promise<void> {
    const card = await app.find('heading', piece);
    await card.scrollIntoView();
    const box = await card.boundingBox();
    const { canvas } = await look('');
    if (box === null) throw new Error(`The card of ${piece} is out of sight`);
    await mouse.move(box.x + 20, box.y + box.height / 2);
    await mouse.down();
    await mouse.move(canvas.x + canvas.width / 2, canvas.y + canvas.height / 2, { steps: 3 });
    await mouse.up();
    dragged.set('a card', (dragged.get('a card') ?? 0) + 1);
  }

  /** A click on what bears that name; looked for at once in the page, and waited for where it is not there yet. */
  async function press(role: string, name: string): Promise<void> {
    const at = await page.evaluate(
      (wantedRole, wantedName) => {
        const named = (one: Element): boolean =>
          (one.getAttribute('aria-label') ?? (one as HTMLElement).innerText).trim() === wantedName;
        const able = (one: Element): boolean =>
          !(one as HTMLButtonElement).disabled && one.getAttribute('aria-disabled') !== 'true';
        const all = document.querySelectorAll(wantedRole === 'tab' ? '[role=tab]' : 'button:not([role])');
        const found = [...all].filter((one) => named(one) && able(one) && one.checkVisibility());
        if (found.length !== 1) return null;
        found[0].scrollIntoView({ block: 'nearest' });
        const box = found[0].getBoundingClientRect();
        return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      },
      role,
      name,
    );
    if (at === null) await app.press(role, name);
    else await mouse.click(at.x, at.y);
  }

  return {
    dragged,
    choose: (thing) => press('tab', thing),
    async work(button) {
      const piece = carries.exec(button)?.[1];
      const wanted = pullFor(button);
      if (wanted !== null) return pull(wanted);
      if (piece !== undefined) await carry(piece);
      else await press('button', button);
      return false;
    },
  };
}
