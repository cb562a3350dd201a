import type { Limits } from '../../procedure/index.ts';
import { act } from '../../rig/index.ts';
import { rest, senseAt, type Rested, type Stood } from './gas.ts';
import type { Move } from './moves.ts';

/**
 * Plays a move on a rig at rest; null where the hand is hindered at its first action, or the move is none here. While
 * gas blows past a seat its pressure is anything between the street's and the main's: what would hurt at the main's is
 * then played once more at the street's, so that no state behind a lucky move is left out.
 */
export function step(from: Stood, move: Move, limits: Limits, known?: Rested): Stood | null {
  const next = playedAt(from, move, limits, known);
  if (next?.rig.ending?.kind !== 'hurt' || !from.gas.blowing) return next;
  const spent = { barrel: from.gas.barrel, chamber: false, above: false, blowing: true };
  return playedAt({ rig: from.rig, gas: spent }, move, limits, known) ?? next;
}

function playedAt(from: Stood, move: Move, limits: Limits, known?: Rested): Stood | null {
  let now = from;
  let done = 0;
  const acts = move.acts(() => now.rig, limits);
  for (let next = acts.next(); !next.done;) {
    const outcome = act(now.rig, next.value, senseAt(now));
    if (typeof outcome === 'string') {
      next = acts.next(outcome);
      continue;
    }
    done += 1;
    now = outcome.rig === now.rig ? now : rest({ rig: outcome.rig, gas: now.gas }, known);
    if (now.rig.ending !== null) break;
    next = acts.next(null);
  }
  return done === 0 ? null : now;
}
