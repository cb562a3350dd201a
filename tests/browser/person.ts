import type { App } from './harness.ts';
import { inEnglish, type Tongue } from './tongue.ts';

/** How a person gets at what the screen offers: by its keys, or by a mouse. */
export interface Way {
  /** Puts hands on a thing of the list. */
  readonly choose: (thing: string) => Promise<void>;
  /** Does what a button of that name would; true when something came of it though the hand was hindered in the end. */
  readonly work: (button: string) => Promise<boolean>;
}

/** Everything by role and name, focus and Enter. */
const byKeys = (app: App, { label }: Tongue): Way => ({
  choose: (thing) => app.pressByKey('tab', label(thing)),
  work: async (button) => {
    await app.pressByKey('button', label(button));
    return false;
  },
});

/** A crew member at the screen: finds things by the words on it and knows only what it says. */
export interface Person {
  readonly app: App;
  /** The language the screen is in. Buttons are named by their English words and looked up. */
  readonly tongue: Tongue;
  /** Puts hands on a thing: the tab of that name. */
  on(thing: string): Promise<void>;
  /** Does what a button says and returns what the log says came of it, newest last. Fails when hindered. */
  act(button: string): Promise<string[]>;
  /** The same, where the hand may be hindered: null then. */
  attempt(button: string): Promise<string[] | null>;
  /** Acts one after the other. */
  acts(...buttons: string[]): Promise<void>;
  /** Acts until what came of it answers; fails after so many. */
  actUntil(button: string, answer: RegExp, most: number): Promise<string>;
  /** What a gauge shows, in the units chosen; 0 while it is not on the rig. */
  gauge(name: string): Promise<number>;
  /** Seconds on the simulated clock. */
  clock(): Promise<number>;
}

const gaugeText = (name: string): string =>
  `(() => [...document.querySelectorAll('figure')].map((one) => one.innerText).find((text) => text.includes(${JSON.stringify(name)})) ?? '')()`;

/** The first number in a text. */
export function figureIn(text: string, pattern: RegExp): number {
  const found = pattern.exec(text)?.[1];
  if (found === undefined) throw new Error(`No figure ${String(pattern)} in "${text}"`);
  return Number(found.replace(',', '.'));
}

/** The torque a hand feels, N·m, in whatever language it is told; 0 where none is. */
export const torqueIn = (text: string): number => (/N·m/.test(text) ? figureIn(text, /([\d.,]+) N·m/) : 0);

/** The lines of the log, newest first, once the hands are done. */
export const readLog = (page: App['page']): Promise<string[]> =>
  page.evaluate(async () => {
    const fromMs = performance.now();
    while (document.querySelector('main')?.getAttribute('aria-busy') !== 'false') {
      if (performance.now() - fromMs > 20_000) throw new Error('The hands were never done');
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    return [...document.querySelectorAll('[role=log] p')].map((line) =>
      (line as HTMLElement).innerText.replace(/\s+/g, ' '),
    );
  });

export function personAt(app: App, tongue: Tongue = inEnglish, way: Way = byKeys(app, tongue)): Person {
  let lastTop = '';

  async function attempt(button: string): Promise<string[] | null> {
    const moved = await way.work(button);
    const lines = await readLog(app.page);
    const refused = tongue.says.hindered.test(lines[0] ?? '');
    const hindered = refused && !moved;
    const happened = refused ? lines.slice(1) : lines;
    const known = happened.indexOf(lastTop);
    lastTop = happened[0] ?? '';
    return hindered ? null : happened.slice(0, known === -1 ? undefined : known).reverse();
  }

  async function act(button: string): Promise<string[]> {
    const lines = await attempt(button);
    if (lines === null) throw new Error(`"${button}" was hindered: ${(await readLog(app.page))[0]}`);
    return lines;
  }

  return {
    app,
    tongue,
    on: way.choose,
    attempt,
    act,
    async acts(...buttons) {
      for (const button of buttons) await act(button);
    },
    async actUntil(button, answer, most) {
      for (let times = 0; times < most; times += 1) {
        const found = (await act(button)).find((line) => answer.test(line));
        if (found !== undefined) return found;
      }
      throw new Error(`"${button}" ${most} times never led to ${String(answer)}`);
    },
    async gauge(name) {
      const text = String(await app.page.evaluate(gaugeText(tongue.label(name))));
      return text.includes(tongue.label('not on the rig')) ? 0 : figureIn(text, /(-?[\d.,]+) (?:kPa|psig)/);
    },
    async clock() {
      const text = await app.page.evaluate(
        (name) => document.querySelector(`[aria-label=${name}] time`)?.textContent ?? '',
        tongue.label('Clock'),
      );
      const [hours, minutes, seconds] = text.split(':').map(Number);
      return hours * 3600 + minutes * 60 + seconds;
    },
  };
}
