import type { Action, ActionKind } from '../actions.ts';
import type { Sense } from '../sense.ts';
import type { RigState } from '../state.ts';
import { endingActs } from './ending.ts';
import type { Act, Acts, Outcome } from './outcome.ts';
import { mendingActs } from './mending.ts';
import { pieceActs } from './pieces.ts';
import { rodActs } from './rod.ts';
import { renewalActs } from './renewal.ts';
import { seatActs } from './seat.ts';
import { siteActs } from './site.ts';
import { testingActs } from './testing.ts';
import { valveActs } from './valves.ts';
import { workpieceActs } from './workpiece.ts';

const acts: Acts<ActionKind> = {
  ...siteActs,
  ...workpieceActs,
  ...pieceActs,
  ...mendingActs,
  ...seatActs,
  ...valveActs,
  ...rodActs,
  ...renewalActs,
  ...testingActs,
  ...endingActs,
};

/**
 * A hand tries something. Refuses only what a hand could not do; everything else is done and has its consequence,
 * most of which the gas works out afterwards.
 */
export function act(rig: RigState, action: Action, sense: Sense): Outcome {
  if (rig.ending !== null) return 'ended';
  const doIt = acts[action.kind] as Act<ActionKind>;
  const outcome = doIt(rig, action, sense);
  if (typeof outcome === 'string' || outcome.rig.site.inHole || fromAbove.has(action.kind)) return outcome;
  // whoever works down there has gone back in
  return { ...outcome, rig: { ...outcome.rig, site: { ...outcome.rig.site, inHole: true } } };
}

/** What can be done without going down into the hole. */
const fromAbove: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'leaveHole',
  'site.do',
  'listen',
  'detector.read',
  'gauge.read',
  'testSet.join',
  'testSet.pump',
  'testSet.vent',
  'temperature.read',
  'riser.turn',
  'riser.read',
  'record.write',
  'sign',
  'withdraw',
  'refer',
  'main.isolate',
  'finish',
]);
