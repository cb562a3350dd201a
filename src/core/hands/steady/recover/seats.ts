import { act, fluidQuiet, put, takeOff, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';
import { letGo, seatSaddle } from '../seating.ts';
import { soundPiece } from './kit.ts';

const QUARTER_RAD = Math.PI / 2;
const BOLT_TURNS = 1 / 4;
/** A thread that weeps is turned on by so much, and so often, turns. */
const SNUG_TURNS = 1 / 24;
const SNUGS_MOST = 3;

/** One of the two seats of the saddle: how its rig goes on and comes off, and what is mended while it is off. */
export interface Seat {
  /** What stands on the saddle, up to the valve; over the ball only what is always there. */
  readonly stackOn: (crew: Crew) => Work;
  readonly stackOff: (crew: Crew) => Work;
  /** Everything from the seal up to the valve. */
  readonly on: (crew: Crew) => Work;
  readonly off: (crew: Crew) => Work;
  readonly cleaned: (crew: Crew) => Work;
  /** The thread under the rig snugged; true once leak fluid is quiet on it. */
  readonly snugBelow: (crew: Crew) => Work<boolean>;
}

/** Opened and shut once, so that it is known to turn before it is the only wall. */
function* worked(crew: Crew): Work {
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
  yield* act(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}

export const teeSeat: Seat = {
  stackOn: function* (crew) {
    yield* put(crew, 'isolationValve');
    yield* worked(crew);
  },
  stackOff: function* (crew) {
    yield* takeOff(crew, 'isolationValve');
  },
  on: function* (crew) {
    yield* put(crew, 'seatRing');
    yield* seatSaddle(crew, 'tee');
    yield* teeSeat.stackOn(crew);
  },
  off: function* (crew) {
    yield* teeSeat.stackOff(crew);
    yield* letGo(crew);
    yield* takeOff(crew, 'saddle');
    yield* takeOff(crew, 'seatRing');
  },
  cleaned: function* (crew) {
    yield* act(crew, { kind: 'clean', at: 'boss' });
    yield* soundPiece(crew, 'seatRing', 0, 'proofFails');
    yield* act(crew, { kind: 'look', at: 'boss' });
  },
  snugBelow: (crew) => snugged(crew, 'plug', { kind: 'plug.turn', turns: SNUG_TURNS, holdBack: true }),
};

export const collarSeat: Seat = {
  stackOn: function* (crew) {
    yield* put(crew, 'lowerSpool');
    yield* put(crew, 'isolationValve');
    yield* worked(crew);
    yield* put(crew, 'upperSpool');
  },
  stackOff: function* (crew) {
    yield* takeOff(crew, 'upperSpool');
    yield* takeOff(crew, 'isolationValve');
    yield* takeOff(crew, 'lowerSpool');
  },
  on: function* (crew) {
    yield* put(crew, 'cupGasket');
    yield* put(crew, 'splitCollar');
    for (let pulls = 0; pulls < 4; pulls += 1) {
      yield* act(crew, { kind: 'collarBolt.turn', bolt: 0, turns: BOLT_TURNS });
      yield* act(crew, { kind: 'collarBolt.turn', bolt: 1, turns: BOLT_TURNS });
    }
    yield* seatSaddle(crew, 'collar');
    yield* collarSeat.stackOn(crew);
  },
  off: function* (crew) {
    yield* collarSeat.stackOff(crew);
    yield* letGo(crew);
    yield* takeOff(crew, 'saddle');
    yield* takeOff(crew, 'splitCollar');
    yield* takeOff(crew, 'cupGasket');
  },
  cleaned: function* (crew) {
    yield* act(crew, { kind: 'clean', at: 'coupling' });
    yield* act(crew, { kind: 'look', at: 'gasketSeat' });
    yield* soundPiece(crew, 'cupGasket', 0, 'proofFails');
  },
  snugBelow: (crew) => snugged(crew, 'teeThread', { kind: 'tee.turn', turns: SNUG_TURNS, holdBack: true }),
};

type Snug = {
  readonly kind: 'plug.turn' | 'tee.turn';
  readonly turns: number;
  readonly holdBack: true;
};

function* snugged(crew: Crew, at: 'plug' | 'teeThread', turn: Snug): Work<boolean> {
  for (let snugs = 0; snugs < SNUGS_MOST; snugs += 1) {
    yield* act(crew, turn);
    if (yield* fluidQuiet(crew, at, 30)) return true;
  }
  return false;
}
