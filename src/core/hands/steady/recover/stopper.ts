import { act, attemptTo, pick, put, StopWork, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';
import { topKind } from '../../seen.ts';
import { easeOpen, look, lookDown, rodDown, rodUpAndBarrelOff, sightCapOff } from '../valveAndBleed.ts';
import { another, soundPiece } from './kit.ts';

/** What trying a stopper showed. */
export type StopShown = 'holds' | 'passes' | 'tears' | 'dropped';

/** How often a stopper is set before the bore is left to others. */
const TRIES_MOST = 3;

/**
 * Tries until the bore is stopped. One that passes is slackened and drawn, looked over and wiped or changed, the bore
 * looked down and cleared, and set again; one that dropped is fetched by the magnet through the valve. One in the main
 * ends the job.
 */
export function* stoppedAtLast(crew: Crew, tryStop: (crew: Crew) => Work<StopShown>): Work {
  if (crew.view.rig.stopper === 'fallen') yield* fetched(crew);
  for (let tries = 0; tries < TRIES_MOST; tries += 1) {
    const shown = yield* tryStop(crew);
    if (shown === 'holds') return;
    if (shown === 'dropped') yield* fetched(crew);
    else yield* drawn(crew);
    if (shown === 'tears') yield* another(crew, 'boreStopper', 'stopFails');
    yield* soundPiece(crew, 'boreStopper', 0, 'stopFails');
    yield* boreLookedDown(crew);
  }
  throw new StopWork('stopFails');
}

/** Slackened, drawn up above the valve, shut out, and taken off the holder. */
function* drawn(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'bleed.turn', angleRad: -Math.PI / 2 });
  yield* act(crew, { kind: 'innerRod.turn', turns: -10 });
  yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: null });
}

/** The magnet down through the valve, never a hand. A stopper that is not there any more lies in the main. */
function* fetched(crew: Crew): Work {
  if (topKind(crew.view.rig) === 'rodBarrel') yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'magnet') });
  yield* put(crew, 'rodBarrel');
  yield* act(crew, { kind: 'rod.hold', held: true });
  yield* act(crew, { kind: 'collar.set', travelM: null });
  if (!(yield* rodDown(crew))) {
    yield* easeOpen(crew);
    yield* rodDown(crew);
  }
  const caught = crew.view.rig.rod.load === 'stopper';
  yield* rodUpAndBarrelOff(crew);
  if (!caught) throw new StopWork('stopFails');
  yield* act(crew, { kind: 'rod.load', piece: null });
}

function* boreLookedDown(crew: Crew): Work {
  const saw = yield* lookDown(crew);
  if (saw.boreClear === false) {
    yield* act(crew, { kind: 'clean', at: 'bore' });
    if ((yield* look(crew)).boreClear === false) throw new StopWork('stopFails');
  }
  yield* sightCapOff(crew);
}
