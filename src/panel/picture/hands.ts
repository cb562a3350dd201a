import type { Action } from '../../core/rig/index.ts';
import type { Intent } from '../../scene/index.ts';
import type { Felt, Grasp } from '../hands/grasp.ts';

/** What is said by the pointer. */
export interface Tip {
  readonly name: string;
  readonly grasp: Grasp | null;
  readonly felt: Felt | null;
  /** Why it does not give, or empty. */
  readonly refused: string;
}

/** Hands on the picture: what they ask for, and what they are told there. */
export interface PictureHands {
  readonly intent: (asked: Intent) => void;
  /** What is held by a part (`id/part`); null where nothing of it is worked, or it would not give. */
  readonly graspOf: (target: string) => Grasp | null;
  readonly tipOf: (target: string, held: boolean) => Tip | null;
  /** Work whose place is looked at instead of the last done, or null. */
  readonly lookAt: Action | null;
  /** Id of the piece that was chosen, or null. */
  readonly chosen: string | null;
}
