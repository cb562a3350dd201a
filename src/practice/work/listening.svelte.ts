import type { Phase, SittingView } from '../../session/index.ts';
import { hear, openEar, type Ear, type Moment, type Sound } from '../../sound/index.ts';

/** How long a passing sound stays captioned, and any sound once the clock is held, ms. */
const captionMs = 3500;
const clockRuns: ReadonlySet<Phase> = new Set(['running', 'hurried']);
/** Facts further back than this were not heard now: the run was opened or gone back in. */
const mostFactsAtOnce = 40;

/**
 * The ear at a sitting: hears what came between one view and the next, plays it where sound is on, and holds what is
 * to be captioned. The device is opened only after a press or a key, as browsers ask.
 */
export class Listening {
  /** What goes on now and what passed a moment ago. */
  sounds = $state.raw<readonly Sound[]>([]);
  #before: Moment | null = null;
  #facts = 0;
  #ear: Ear | null = null;
  #touched = false;
  #goesOn = false;
  #clockS = -1;
  #fading: ReturnType<typeof setTimeout> | undefined;

  /** Somebody pressed or typed: from here on sound may be played. */
  readonly touch = (): void => {
    this.#touched = true;
  };

  follow(
    { run, readings, phase }: Pick<SittingView, 'run' | 'readings' | 'phase'>,
    wanted: { readonly sound: boolean; readonly volume: number },
  ): void {
    const now: Moment = { readings, rig: run.rig };
    const since = run.facts.slice(this.#facts);
    const steady = this.#before !== null && run.facts.length >= this.#facts && since.length < mostFactsAtOnce;
    const heard = hear(this.#before ?? now, now, steady ? since : []);
    // While the clock is held nothing goes on: what was heard last dies away, until an act makes time pass again.
    const goesOn = clockRuns.has(phase);
    const isNew = goesOn || this.#goesOn || run.clockS !== this.#clockS;
    this.#goesOn = goesOn;
    this.#clockS = run.clockS;
    this.#before = now;
    this.#facts = run.facts.length;
    if (isNew) this.#caption(heard);
    if (wanted.sound && this.#touched) this.#ear ??= openEar(wanted.volume);
    else if (!wanted.sound) this.close();
    this.#ear?.setVolume(wanted.volume);
    if (isNew) this.#ear?.play(heard);
  }

  #caption(heard: readonly Sound[]): void {
    const passed = heard.filter((sound) => !sound.lasts).slice(-3);
    const lasting = heard.filter((sound) => sound.lasts);
    const still = passed.length > 0 ? passed : this.sounds.filter((sound) => !sound.lasts);
    this.sounds = [...lasting, ...still];
    if (passed.length === 0 && this.#goesOn) return;
    clearTimeout(this.#fading);
    this.#fading = setTimeout(() => this.#fade(), captionMs);
  }

  #fade(): void {
    this.sounds = this.#goesOn ? this.sounds.filter((sound) => sound.lasts) : [];
    if (!this.#goesOn) this.#ear?.play([]);
  }

  close(): void {
    this.#ear?.close();
    this.#ear = null;
  }
}
