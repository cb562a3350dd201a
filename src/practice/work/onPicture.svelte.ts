import type { Action } from '../../core/rig/index.ts';
import {
  feltOf,
  graspOf,
  lookAtOf,
  nameOf,
  refusalSaid,
  thingOfKind,
  type gripOf,
  type PictureHands,
} from '../../panel/index.ts';
import type { Intent } from '../../scene/index.ts';
import { kindOfTarget, trialPulls, readPulls, type SittingView } from '../../session/index.ts';

/** What hands on the picture work with, at one moment of a sitting. */
interface AtHand {
  readonly view: SittingView;
  readonly grip: ReturnType<typeof gripOf>;
  readonly hindered: (action: Action) => boolean;
  /** The thing of the list that hands are on, and a way to put them on another. */
  readonly chosen: string;
  readonly choose: (thing: string) => void;
}

/** What a pointer on the picture is up to: which piece it chose, what it pulls on, and what the eye was turned to. */
export class OnPicture {
  #item = $state.raw<string | null>(null);
  #ready = $state.raw<Action | null>(null);
  /* Which thing was last asked for, and how much had been done by then. */
  #turned = $state.raw<{ readonly to: Action | null; readonly acts: number }>({ to: null, acts: -1 });
  #pointedAt: string | null = null;
  /* Refusals up to here are not about what is held now. */
  #refusedBefore = $state.raw(0);
  readonly #puller: ReturnType<typeof readPulls>;

  constructor(act: (action: Action) => void) {
    this.#puller = readPulls(act);
  }

  /** The hands are on another thing: look there, unless it was pointed at in the picture. */
  turnTo(thing: string, view: SittingView): void {
    const pointed = thing === this.#pointedAt;
    this.#pointedAt = null;
    if (pointed) return;
    this.#item = null;
    this.#turned = { to: lookAtOf(thing, view.run.rig), acts: view.entries.length };
  }

  hands(at: AtHand): PictureHands {
    const { view, grip, hindered } = at;
    const { rig } = view.run;
    const gives = (target: string): boolean =>
      trialPulls(target, rig, grip.holdBack).some((a) => !hindered(a));
    return {
      intent: (asked) => this.#do(asked, at),
      graspOf: (target) => (gives(target) ? graspOf(target, rig) : null),
      tipOf: (target, held) => {
        const refusal = held && view.refusal !== null && view.refusal.number > this.#refusedBefore;
        return {
          name: nameOf(target, grip),
          grasp: held || gives(target) ? graspOf(target, rig) : null,
          felt: held ? feltOf(target, grip, this.#ready) : null,
          refused: refusal && view.refusal !== null ? refusalSaid(view.refusal, grip.voice) : '',
        };
      },
      lookAt: view.entries.length === this.#turned.acts ? this.#turned.to : null,
      chosen: this.#item,
    };
  }

  #do(asked: Intent, { view, grip, chosen, choose }: AtHand): void {
    const { rig } = view.run;
    if (asked.kind === 'choose') {
      const thing = asked.target === null ? null : thingOfKind(kindOfTarget(asked.target, rig));
      this.#item = thing === null ? null : (asked.target?.split('/')[0] ?? null);
      if (thing === null || thing === chosen) return;
      this.#pointedAt = thing;
      choose(thing);
      return;
    }
    const amount = asked.kind === 'turn' ? asked.turns : asked.lengthM;
    this.#puller.pull({ ...asked, amount }, rig, grip.holdBack, performance.now());
    this.#ready = this.#puller.ready;
    if (asked.ended) this.#refusedBefore = view.refusal?.number ?? this.#refusedBefore;
  }
}
