import { clearAir } from '../alarm.ts';
import { attemptTo, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

const QUARTER_RAD = Math.PI / 2;

/** True where the air lets a crew work, after a blower if need be. */
export function* airFit(crew: Crew): Work<boolean> {
  if (crew.view.readings.alarm < 2) return true;
  yield* shutQuickly(crew);
  try {
    yield* clearAir(crew);
    return true;
  } catch (stop) {
    if (!(stop instanceof StopWork)) throw stop;
    return false;
  }
}

/** What one movement of the hand shuts: cocks that let gas out, and a ball with nothing over it. */
export function* shutQuickly(crew: Crew): Work {
  const { stack, bleedOpenRad, ventOpen, valveOpenRad } = crew.view.rig;
  const top = stack[stack.length - 1]?.kind ?? null;
  if (top === 'testHead' && ventOpen > 0) yield* attemptTo(crew, { kind: 'vent.turn', open: -1 });
  if (bleedOpenRad > 0) yield* attemptTo(crew, { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
  const bare = top === 'isolationValve' || top === 'upperSpool';
  if (bare && valveOpenRad > 0) yield* attemptTo(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}
