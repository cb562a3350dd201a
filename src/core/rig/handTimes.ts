import { constants } from '../catalogue/index.ts';
import type { Action } from './actions.ts';

/** Seconds two pairs of hands need for it (all assumed: an unhurried crew). */
const seconds: Readonly<Record<Action['kind'], number>> = {
  'site.do': 45,
  'detector.bump': 40,
  'detector.read': 12,
  'gauge.zero': 15,
  'gauge.read': 4,
  look: 12,
  listen: 6,
  measure: 20,
  clean: 90,
  'oil.apply': 20,
  'leakFluid.apply': 4,
  mark: 8,
  'piece.inspect': 12,
  'piece.reject': 4,
  'piece.clean': 45,
  'piece.place': 40,
  'piece.remove': 30,
  'chain.hook': 15,
  'chain.tap': 4,
  'tensioner.turn': 3,
  'valve.turn': 2,
  'vent.turn': 1,
  'pump.stroke': 0,
  'bleed.turn': 1,
  'bleed.clear': 30,
  'hose.lead': 30,
  'rod.fit': 30,
  'rod.load': 20,
  'rod.hold': 1,
  'rod.move': 2,
  'rod.turn': 3,
  'innerRod.turn': 2,
  'collar.set': 15,
  'plug.turn': 6,
  'tee.turn': 8,
  'keeper.turn': 8,
  'keeper.pull': 8,
  'testSet.join': 60,
  'testSet.pump': 0,
  'testSet.vent': 1,
  'temperature.read': 10,
  'riser.turn': 2,
  'riser.read': 5,
  'sealant.apply': 20,
  'bond.clamp': 25,
  'branch.cut': 120,
  'tee.trim': 120,
  'gaugeRing.try': 20,
  'service.purge': 180,
  'collarBolt.turn': 5,
  'record.write': 10,
  sign: 3,
  withdraw: 3,
  refer: 5,
  'main.isolate': 600,
  leaveHole: 15,
  finish: 5,
};

/** A new service laid, joined up and left in sight of its test, s (assumed: an hour, with another crew digging). */
const LAYING_S = 3600;

/** Shortest time the hands are busy with an action, s. */
export function handS(action: Action): number {
  switch (action.kind) {
    case 'pump.stroke':
      return action.strokes / constants.pumpStrokesPerS.value;
    case 'testSet.pump':
      return action.strokes / constants.pumpStrokesPerS.value;
    case 'site.do':
      return action.task === 'layService' ? LAYING_S : seconds[action.kind];
    case 'leakFluid.apply':
      return seconds[action.kind] + action.watchS;
    case 'rod.turn':
    case 'tee.turn':
    case 'plug.turn':
    case 'innerRod.turn':
      return seconds[action.kind] * Math.max(0.3, Math.abs(action.turns));
    case 'branch.cut':
      return action.part === 'pilot' ? 60 : action.part === 'plugPilot' ? 30 : seconds[action.kind];
    default:
      return seconds[action.kind];
  }
}
