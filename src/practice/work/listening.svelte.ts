import type { SittingView } from '../../session/index.ts';
import { hear, openEar, type Ear, type Moment, type Sound } from '../../sound/index.ts';

/** How long a passing sound stays captioned, ms. */
const captionMs = 3500;
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
  #fading: ReturnType<typeof setTimeout> | undefined;

  /** Somebody pressed or typed: from here on sound may be played. */
  readonly touch = (): void => {
    this.#touched = true;
  };

  follow({ run, readings }: SittingView, wanted: { readonly sound: boolean; readonly volume: number }): void {
    const now: Moment = { readings, rig: run.rig };
    const since = run.facts.slice(this.#facts);
    const steady = this.#before !== null && run.facts.length >= this.#facts && since.length < mostFactsAtOnce;
    const heard = hear(this.#before ?? now, now, steady ? since : []);
    this.#before = now;
    this.#facts = run.facts.length;
    this.#caption(heard);
    if (wanted.sound && this.#touched) this.#ear ??= openEar(wanted.volume);
    else if (!wanted.sound) this.close();
    this.#ear?.setVolume(wanted.volume);
    this.#ear?.play(heard);
  }

  #caption(heard: readonly Sound[]): void {
    const passed = heard.filter((sound) => !sound.lasts);
    const lasting = heard.filter((sound) => sound.lasts);
    if (passed.length === 0) {
      this.sounds = [...lasting, ...this.sounds.filter((sound) => !sound.lasts)];
      return;
    }
    this.sounds = [...lasting, ...passed.slice(-3)];
    clearTimeout(this.#fading);
    this.#fading = setTimeout(() => {
      this.sounds = this.sounds.filter((sound) => sound.lasts);
    }, captionMs);
  }

  close(): void {
    this.#ear?.close();
    this.#ear = null;
  }
}
