import type { Action, ActionKind } from '../rig/index.ts';
import type { Step, Work } from './hand.ts';
import { remember, StopWork, type Crew } from './memory.ts';

/** Longest a blower is given to clear the hole, s, and how often the detector is asked. */
const CLEARS_MOST_S = 300;
const ASKS_EVERY_S = 10;

/** What is still done at the high alarm: shutting, holding, telling, and going. */
const allowed: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'valve.turn',
  'bleed.turn',
  'vent.turn',
  'rod.hold',
  'leaveHole',
  'site.do',
  'main.isolate',
  'refer',
]);

/** Whether an act is put off because the high alarm rings. */
export function mustLeave(crew: Crew, action: Action): boolean {
  return crew.heedsAlarm && crew.view.readings.alarm === 2 && !allowed.has(action.kind);
}

/** At the low alarm a blower is set from above, once, before the work goes on. */
export function* freshenAir(crew: Crew): Work {
  if (!crew.heedsAlarm || crew.view.readings.alarm !== 1 || crew.view.rig.done.ventilate !== undefined)
    return;
  yield* plainly(crew, { kind: 'site.do', task: 'ventilate' });
}

/**
 * At the high alarm everybody goes, upwind; a blower is set from above, and work goes on once the alarm has fallen
 * back. Where it does not, there is nothing to be done in that hole.
 */
export function* clearAir(crew: Crew): Work {
  yield* plainly(crew, { kind: 'leaveHole' });
  if (crew.view.rig.done.ventilate === undefined)
    yield* plainly(crew, { kind: 'site.do', task: 'ventilate' });
  for (let waitedS = 0; waitedS < CLEARS_MOST_S; waitedS += ASKS_EVERY_S) {
    if (crew.view.readings.alarm < 2) return;
    yield* plainly(crew, { waitS: ASKS_EVERY_S });
  }
  if (crew.view.readings.alarm === 2) throw new StopWork('gasInHole');
}

function* plainly(crew: Crew, step: Step): Work {
  crew.view = yield step;
  remember(crew, crew.view.facts);
}
