import type { ThreadNps } from '../../core/catalogue/index.ts';
import { lathe, type RZ } from '../shape/lathe.ts';
import { acrossFlats } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { join, moved, type Solid } from '../shape/solid.ts';
import { maleHelix, maleThread } from '../shape/thread.ts';
import { HAIR } from './part.ts';

export interface SquareHead {
  readonly threadLengthM: number;
  readonly squareHeightM: number;
  readonly acrossFlatsM: number;
}

/**
 * Threaded body of a plug, origin on its shoulder, thread downward. `faceZM` is where the female's face stands when it
 * is made up. The points below are added under the thread, from the axis outward. Free of its hole, the thread is drawn
 * as the helix it is; in it, as rings that meet those of the hole.
 */
export function threadedBody(
  nps: ThreadNps,
  head: SquareHead,
  faceZM: number,
  below: readonly RZ[] = [],
  free = false,
): Solid {
  const bottom = -head.threadLengthM;
  if (free) {
    const stem = below.length ? lathe([...below, [0, bottom - HAIR]]) : null;
    const thread = maleHelix(nps, bottom, 0, faceZM);
    return stem ? join(thread, stem) : thread;
  }
  const thread = maleThread(nps, bottom + 0.001, -0.001, faceZM);
  const last = thread[thread.length - 1][0];
  return lathe([
    ...(below.length ? below : [[0, bottom] as const]),
    [thread[0][0] - 0.001, bottom],
    ...thread,
    [last - 0.001, 0],
    [0, 0],
  ]);
}

/** The square on top, standing a hair above the shoulder. */
export const square = (head: SquareHead): Solid =>
  moved(prism(acrossFlats(4, head.acrossFlatsM), HAIR, head.squareHeightM), [0, 0, 0]);
