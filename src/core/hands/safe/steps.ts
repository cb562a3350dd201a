import { act, attemptTo, pick, put, StopWork, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { mainOpen, topKind, valveOn, type RigSeen } from '../seen.ts';
import { drawUpChains } from '../steady/seating.ts';
import { rodDown } from '../steady/valveAndBleed.ts';
import { closeByRod, snugPlugByRod, topOff } from './onRod.ts';

/** Turned back by less than this a marked thread stands where it stood, turns. */
const SNUG_TURNS = 0.02;
/** Past this the tee's thread is on its way out, and the only way is on, turns. */
const BITE_TURNS = 0.13;
/** Legs drawn up by less than this carry nothing, turns past snug. */
const SLACK_TURNS = 0.15;

/** One thing between the crew and a state that can be left. */
export interface SafeStep {
  readonly id: string;
  readonly needed: (rig: RigSeen) => boolean;
  readonly work: (crew: Crew) => Work;
}

const teeIn = ({ tee }: RigSeen): boolean => tee.at === 'coupling';

/** The rig holds what comes up: shut in over saddle and valve. */
export function contained(rig: RigSeen): boolean {
  return rig.saddleOn !== 'board' && valveOn(rig) && (topKind(rig) !== null || rig.valveOpenRad === 0);
}

const loose = (rig: RigSeen): boolean =>
  rig.plug.at === 'tee' && teeIn(rig) && rig.plug.turnsBack > SNUG_TURNS;
const bare = ({ saddleOn }: RigSeen): boolean => saddleOn === 'board';
/** A wrench or a hand gets at the top of the tee or coupling. */
const inReach = (rig: RigSeen): boolean => bare(rig) || !valveOn(rig);
const live = (rig: RigSeen): boolean => mainOpen(rig) || loose(rig) || rig.tee.turnsBack > BITE_TURNS;

/** In the order in which they matter: what is nearest to letting gas out comes first. */
export const safeSteps: readonly SafeStep[] = [
  {
    id: 'plugByHand',
    needed: (rig) => teeIn(rig) && mainOpen(rig) && inReach(rig) && rig.saddleOn !== 'coupling',
    work: plugByHand,
  },
  {
    id: 'closingByHand',
    needed: (rig) => !teeIn(rig) && mainOpen(rig) && bare(rig),
    work: function* (crew) {
      if (crew.view.rig.rod.load !== null) yield* act(crew, { kind: 'rod.load', piece: null });
      yield* act(crew, { kind: 'piece.place', piece: pick(crew, 'closingPlug'), holdBack: true });
    },
  },
  {
    id: 'valve',
    needed: (rig) => live(rig) && !bare(rig) && !valveOn(rig),
    work: function* (crew) {
      yield* put(crew, 'isolationValve');
    },
  },
  {
    id: 'holdRod',
    needed: (rig) => topKind(rig) === 'rodBarrel' && !rig.rod.held,
    work: function* (crew) {
      yield* act(crew, { kind: 'rod.hold', held: true });
    },
  },
  {
    id: 'chains',
    needed: (rig) => live(rig) && !bare(rig) && rig.chains.some((c) => !c.hooked || c.turns < SLACK_TURNS),
    work: chainsOn,
  },
  {
    id: 'leaveStopper',
    needed: (rig) => rig.stopper === 'holder' && rig.rod.load === 'stopper' && rig.branch.cut !== 'whole',
    work: function* (crew) {
      yield* act(crew, { kind: 'rod.turn', turns: 1 / 4 });
    },
  },
  {
    id: 'keeperByRod',
    needed: (rig) => teeIn(rig) && mainOpen(rig) && !inReach(rig) && rig.stopper === 'set',
    work: (crew) => closeByRod(crew, 'keeper'),
  },
  {
    id: 'plugByRod',
    needed: (rig) => teeIn(rig) && mainOpen(rig) && !inReach(rig),
    work: (crew) => closeByRod(crew, 'plug'),
  },
  {
    id: 'closingByRod',
    needed: (rig) => !teeIn(rig) && mainOpen(rig) && !bare(rig),
    work: (crew) => closeByRod(crew, 'closing'),
  },
  { id: 'snugPlug', needed: loose, work: snugPlug },
  {
    id: 'snugTee',
    needed: (rig) => teeIn(rig) && bare(rig) && rig.tee.turnsBack > SNUG_TURNS,
    work: function* (crew) {
      const turns = Math.min(8, crew.view.rig.tee.turnsBack);
      yield* act(crew, { kind: 'tee.turn', turns, holdBack: true });
    },
  },
  {
    id: 'teeOnward',
    needed: (rig) => teeIn(rig) && !bare(rig) && rig.tee.turnsBack > BITE_TURNS && rig.keeper === 'tee',
    work: drawOnward,
  },
  {
    id: 'plugPilot',
    needed: (rig) => teeIn(rig) && rig.branch.cut === 'pilot' && !rig.branch.pilotPlugged,
    work: function* (crew) {
      yield* act(crew, { kind: 'branch.cut', part: 'plugPilot' });
    },
  },
  {
    id: 'capService',
    needed: (rig) => rig.branch.cut === 'through' && !rig.branch.capped,
    work: function* (crew) {
      yield* put(crew, 'serviceCap');
    },
  },
];

/** The old plug into the open tee by hand, then by wrench. */
function* plugByHand(crew: Crew): Work {
  if (crew.view.rig.rod.load === 'plug') yield* act(crew, { kind: 'rod.load', piece: null });
  for (let pulls = 0; pulls < 4; pulls += 1) {
    yield* act(crew, { kind: 'plug.turn', turns: 4, holdBack: true });
    const { at, turnsBack } = crew.view.rig.plug;
    if (at === 'tee' && turnsBack <= 4) break;
  }
  yield* snugPlug(crew);
}

function* snugPlug(crew: Crew): Work {
  const { plug, rod } = crew.view.rig;
  if (rod.engaged === 'plug') return yield* snugPlugByRod(crew);
  const turns = Math.min(8, plug.turnsBack + 1 / 24);
  if ((yield* attemptTo(crew, { kind: 'plug.turn', turns, holdBack: true })) !== null) return;
  yield* ontoHead(crew);
  yield* snugPlugByRod(crew);
}

/** The bare socket down on the square head of what is in the tee. */
function* ontoHead(crew: Crew): Work {
  if (topKind(crew.view.rig) !== 'rodBarrel' || crew.view.rig.rod.load !== null) {
    yield* topOff(crew);
    if (crew.view.rig.rod.load !== null) yield* act(crew, { kind: 'rod.load', piece: null });
  }
  const socket = pick(crew, 'socket');
  if (crew.view.rig.rod.tip !== socket) {
    yield* topOff(crew);
    yield* act(crew, { kind: 'rod.fit', tip: socket });
  }
  if (topKind(crew.view.rig) === null) yield* put(crew, 'rodBarrel');
  yield* attemptTo(crew, { kind: 'rod.hold', held: true });
  yield* attemptTo(crew, { kind: 'collar.set', travelM: null });
  yield* attemptTo(crew, { kind: 'valve.turn', angleRad: Math.PI / 2 });
  if (!(yield* rodDown(crew))) throw new StopWork('other');
}

/** Past its bite a tee comes out before it goes back: on with it, and the closing plug after it. */
function* drawOnward(crew: Crew): Work {
  if (crew.view.rig.rod.engaged !== 'keeper') yield* ontoHead(crew);
  for (let turns = 0; turns < 40 && crew.view.rig.tee.at === 'coupling'; turns += 1)
    yield* act(crew, { kind: 'rod.turn', turns: -1 / 2 });
}

function* chainsOn(crew: Crew): Work {
  for (const nth of [0, 1] as const) {
    if (crew.view.rig.chains[nth].piece === null) yield* put(crew, 'chain', nth);
    if (!crew.view.rig.chains[nth].hooked) yield* act(crew, { kind: 'chain.hook', chain: nth, hooked: true });
  }
  yield* drawUpChains(crew);
}
