import type { Limits } from '../../procedure/index.ts';
import {
  cradleMains,
  elevations,
  geometryOf,
  hasValve,
  sizedBy,
  squeezeTorqueNm,
  stopperRubber,
  stopperSize,
  tipLengthM,
  topPiece,
  type Action,
  type Hindrance,
  type KitKind,
  type RigState,
} from '../../rig/index.ts';

/**
 * A move of the search: a piece of work in one breath, made of the actions a hand would do. It is told after each
 * whether the hand was hindered and sees the rig as it then stands. A move whose first action is hindered is none.
 */
export type Acts = Generator<Action, void, Hindrance | null>;
export interface Move {
  readonly id: string;
  readonly acts: (look: () => RigState, limits: Limits) => Acts;
}

const QUARTER_RAD = Math.PI / 2;
const BITE_TURNS = 1 / 8;
/** All the way, for a thread or a rod that stops where it must. */
const FAR_TURNS = 8;
const FAR_M = 0.5;

/** The piece of a kind that fits this job and lies ready, or null. */
function ready(rig: RigState, kind: KitKind, nth = 0): string | null {
  const { teeSize, mainNps } = rig.job.workpiece;
  const size = { tee: teeSize, main: mainNps, service: rig.job.system.service.nps, one: null }[sizedBy[kind]];
  const fitting = Object.values(rig.kit).filter(
    (piece) => piece.kind === kind && piece.where === 'board' && (size === null || piece.trueSize === size),
  );
  return fitting[nth]?.id ?? null;
}

function fitted(rig: RigState, kind: KitKind): string | null {
  return Object.values(rig.kit).find((piece) => piece.kind === kind && piece.where === 'rig')?.id ?? null;
}

function* put(rig: RigState, kind: KitKind): Generator<Action, Hindrance | null, Hindrance | null> {
  const piece = ready(rig, kind);
  return piece === null ? 'notOnBoard' : yield { kind: 'piece.place', piece, holdBack: true };
}

function* off(rig: RigState, kind: KitKind): Generator<Action, Hindrance | null, Hindrance | null> {
  const piece = fitted(rig, kind);
  return piece === null ? 'notPlaced' : yield { kind: 'piece.remove', piece, holdBack: true };
}

const one = (action: (rig: RigState) => Action | null): Move['acts'] =>
  function* (look) {
    const next = action(look());
    if (next !== null) yield next;
  };

const places = (kind: KitKind): Move['acts'] =>
  function* (look) {
    yield* put(look(), kind);
  };

const removes = (kind: KitKind): Move['acts'] =>
  function* (look) {
    yield* off(look(), kind);
  };

/** Chains hung, cradled where the main is small, hooked, and every leg drawn up as far as either seat asks. */
function* chainsDrawn(look: () => RigState): Acts {
  if (cradleMains.includes(look().job.workpiece.mainNps)) {
    while (look().saddle.cradles.length < 2) if ((yield* put(look(), 'cradleBlock')) !== null) break;
  }
  while (look().chains.some((chain) => chain.piece === null)) {
    if ((yield* put(look(), 'chain')) !== null) return;
  }
  for (const chain of [0, 1]) {
    if (!look().chains[chain].hooked) yield { kind: 'chain.hook', chain, hooked: true };
  }
  for (const chain of [0, 1]) {
    for (const side of ['left', 'right'] as const) {
      const turns = DRAWN_TURNS - look().chains[chain][side];
      if (turns > 0) yield { kind: 'tensioner.turn', chain, side, turns };
    }
  }
}
/** Turns past snug that press either seat shut at the pressures of this method. */
const DRAWN_TURNS = 3 / 4;

function* chainsSlack(look: () => RigState): Acts {
  for (const chain of [0, 1]) {
    for (const side of ['left', 'right'] as const) {
      if (look().chains[chain][side] > 0) yield { kind: 'tensioner.turn', chain, side, turns: -3 };
    }
  }
}

function* chainsOff(look: () => RigState): Acts {
  for (const chain of [0, 1])
    if (look().chains[chain].hooked) yield { kind: 'chain.hook', chain, hooked: false };
}

/** Over the coupling the valve stands on the lower spool. */
function* valveOn(look: () => RigState): Acts {
  if (look().saddle.on === 'coupling' && look().stack.length === 0) yield* put(look(), 'lowerSpool');
  yield* put(look(), 'isolationValve');
}

function* valveOff(look: () => RigState): Acts {
  if ((yield* off(look(), 'isolationValve')) === null) yield* off(look(), 'lowerSpool');
}

type Load = 'boreStopper' | 'keeperPlug' | 'closingPlug' | 'topPlug' | null;

/** Tip and load made ready on the bench, barrel on (with the upper spool where it wants height), rod held. */
const barrelOn = (tip: 'socket' | 'stopperHolder', load: Load): Move['acts'] =>
  function* (look) {
    const bench = look();
    if (bench.rod.load !== null || !hasValve(bench) || topPiece(bench) !== null) return;
    const fits = bench.rod.tip !== null && bench.kit[bench.rod.tip].kind === tip;
    if (!fits) {
      const id = ready(bench, tip);
      if (id === null || (yield { kind: 'rod.fit', tip: id }) !== null) return;
    }
    if (load !== null) {
      const piece = load === 'topPlug' ? load : ready(look(), load);
      if (piece === null) return;
      if (load === 'closingPlug' && !look().kit[piece].sealant) yield { kind: 'sealant.apply', piece };
      if ((yield { kind: 'rod.load', piece }) !== null) return;
    }
    const barrel = yield* put(look(), 'rodBarrel');
    if (barrel === 'noHeadroom') {
      if ((yield* put(look(), 'upperSpool')) !== null || (yield* put(look(), 'rodBarrel')) !== null) return;
    } else if (barrel !== null) return;
    yield { kind: 'rod.hold', held: true };
  };

/** Barrel off, with the spool under it; what hangs on the rod goes to the bench, the tip with it. */
function* barrelOff(look: () => RigState): Acts {
  if ((yield* off(look(), 'rodBarrel')) !== null) return;
  if (fitted(look(), 'upperSpool') !== null) yield* off(look(), 'upperSpool');
  if (look().rod.load !== null) yield { kind: 'rod.load', piece: null };
  if (look().rod.collarTravelM !== null) yield { kind: 'collar.set', travelM: null };
  yield { kind: 'rod.fit', tip: null };
}

/** How far below the port's underside the washer is lowered, m: where it belongs, or short beside the port. */
const WASHER_M = { right: 0.004, short: -0.012 };

const stopperDown = (where: keyof typeof WASHER_M): Move['acts'] =>
  function* (look) {
    const rig = look();
    if (rig.rod.load !== 'stopper' || rig.stopper.torqueNm > 0) return;
    const up = elevations(rig)?.rodUpZM;
    if (up === null || up === undefined) return;
    const travelM = up - tipLengthM(rig) - geometryOf(rig.job).portUndersideZM + WASHER_M[where];
    if (travelM < rig.rod.travelM) return;
    if ((yield { kind: 'collar.set', travelM }) === null) yield { kind: 'rod.move', lengthM: FAR_M };
  };

/** The inner rod turned until the rubber carries this share of what the operator calls firm. */
const squeezed = (share: number): Move['acts'] =>
  function* (look, limits) {
    const rig = look();
    const size = stopperSize(rig);
    if (size === null) return;
    const [lowNm, highNm] = limits.stopperFirmNm;
    const wantedNm = (share * (lowNm + highNm)) / 2;
    const rubber = stopperRubber(size, rig.job.workpiece.teeSize);
    let [low, high] = [0, 20];
    for (let i = 0; i < 40; i += 1) {
      const middle = (low + high) / 2;
      if (squeezeTorqueNm(rubber, middle) < wantedNm) low = middle;
      else high = middle;
    }
    const turns = high - rig.stopper.squeezeTurns;
    if (turns > 0.01) yield { kind: 'innerRod.turn', turns: Math.min(10, turns) };
  };

/** Screwed in by the rod: a plug all the way, keeper and closing plug to hand-tight and past it. */
function* rodIn(look: () => RigState, limits: Limits): Acts {
  const { engaged } = look().rod;
  const past = (limits.closingPastHandTurns[0] + limits.closingPastHandTurns[1]) / 2;
  if (engaged === 'closing' && look().closing.engagedTurns === 0) yield { kind: 'rod.turn', turns: -1 / 4 };
  if (engaged === 'plug') {
    const { at, turnsBack } = look().plug;
    yield { kind: 'rod.turn', turns: at === 'tee' ? turnsBack : FAR_TURNS };
  } else if (engaged === 'tee') yield { kind: 'rod.turn', turns: FAR_TURNS };
  else if ((yield { kind: 'rod.turn', turns: limits.closingHandTurns }) === null)
    yield { kind: 'rod.turn', turns: past };
}

/** Sawn through and trimmed until it passes the rig's bore: an untrimmed tee bars nothing less and nothing more. */
function* partedAndTrimmed(look: () => RigState): Acts {
  if ((yield { kind: 'branch.cut', part: 'through' }) !== null) return;
  if (look().tee.trim === 'whole') yield { kind: 'tee.trim', how: 'saw' };
  if (look().tee.trim === 'sawn') yield { kind: 'tee.trim', how: 'dress' };
}

/** Cup gasket over the tee, split collar round it, its bolts drawn evenly. */
function* secondSeat(look: () => RigState): Acts {
  if ((yield* put(look(), 'cupGasket')) !== null || (yield* put(look(), 'splitCollar')) !== null) return;
  for (const bolt of [0, 1]) yield { kind: 'collarBolt.turn', bolt, turns: 1 };
}

export const moves: readonly Move[] = [
  { id: 'plug.bite', acts: one(() => ({ kind: 'plug.turn', turns: -BITE_TURNS, holdBack: true })) },
  { id: 'plug.out', acts: one(() => ({ kind: 'plug.turn', turns: -FAR_TURNS, holdBack: true })) },
  {
    id: 'plug.in',
    acts: one(({ plug }) => {
      const turns = plug.at === 'tee' ? plug.turnsBack : FAR_TURNS;
      return turns > 0 ? { kind: 'plug.turn', turns, holdBack: true } : null;
    }),
  },
  { id: 'tee.bite', acts: one(() => ({ kind: 'tee.turn', turns: -BITE_TURNS, holdBack: true })) },
  { id: 'tee.out', acts: one(() => ({ kind: 'tee.turn', turns: -FAR_TURNS, holdBack: true })) },
  {
    id: 'tee.in',
    acts: one(({ tee }) =>
      tee.turnsBack > 0
        ? { kind: 'tee.turn', turns: Math.min(FAR_TURNS, tee.turnsBack), holdBack: true }
        : null,
    ),
  },
  { id: 'branch.pilot', acts: one(() => ({ kind: 'branch.cut', part: 'pilot' })) },
  {
    id: 'branch.plugPilot',
    acts: one(({ branch }) => (branch.pilotPlugged ? null : { kind: 'branch.cut', part: 'plugPilot' })),
  },
  { id: 'branch.through', acts: partedAndTrimmed },
  { id: 'seatRing.on', acts: places('seatRing') },
  { id: 'seatRing.off', acts: removes('seatRing') },
  { id: 'collar.on', acts: secondSeat },
  {
    id: 'collar.off',
    acts: function* (look) {
      if (look().collar.collar !== null && (yield* off(look(), 'splitCollar')) !== null) return;
      yield* off(look(), 'cupGasket');
    },
  },
  { id: 'saddle.on', acts: places('saddle') },
  { id: 'saddle.off', acts: removes('saddle') },
  { id: 'chains.drawn', acts: chainsDrawn },
  { id: 'chains.slack', acts: chainsSlack },
  { id: 'chains.off', acts: chainsOff },
  { id: 'valve.on', acts: valveOn },
  { id: 'valve.off', acts: valveOff },
  { id: 'valve.open', acts: one(() => ({ kind: 'valve.turn', angleRad: QUARTER_RAD })) },
  { id: 'valve.shut', acts: one(() => ({ kind: 'valve.turn', angleRad: -QUARTER_RAD })) },
  { id: 'testHead.on', acts: places('testHead') },
  { id: 'testHead.off', acts: removes('testHead') },
  { id: 'sightCap.on', acts: places('sightCap') },
  { id: 'sightCap.off', acts: removes('sightCap') },
  { id: 'valveCap.on', acts: places('valveCap') },
  { id: 'valveCap.off', acts: removes('valveCap') },
  { id: 'vent.open', acts: one(() => ({ kind: 'vent.turn', open: 1 })) },
  { id: 'vent.shut', acts: one(() => ({ kind: 'vent.turn', open: -1 })) },
  { id: 'bleed.open', acts: one(() => ({ kind: 'bleed.turn', angleRad: QUARTER_RAD })) },
  { id: 'bleed.shut', acts: one(() => ({ kind: 'bleed.turn', angleRad: -QUARTER_RAD })) },
  { id: 'barrel.socket', acts: barrelOn('socket', null) },
  { id: 'barrel.holder', acts: barrelOn('stopperHolder', null) },
  { id: 'barrel.topPlug', acts: barrelOn('socket', 'topPlug') },
  { id: 'barrel.stopper', acts: barrelOn('stopperHolder', 'boreStopper') },
  { id: 'barrel.keeper', acts: barrelOn('socket', 'keeperPlug') },
  { id: 'barrel.closing', acts: barrelOn('socket', 'closingPlug') },
  { id: 'barrel.off', acts: barrelOff },
  { id: 'rod.hold', acts: one(() => ({ kind: 'rod.hold', held: true })) },
  { id: 'rod.letGo', acts: one(() => ({ kind: 'rod.hold', held: false })) },
  {
    id: 'rod.down',
    acts: one(({ rod }) => (rod.load === 'stopper' ? null : { kind: 'rod.move', lengthM: FAR_M })),
  },
  { id: 'rod.up', acts: one(() => ({ kind: 'rod.move', lengthM: -FAR_M })) },
  { id: 'stopper.down', acts: stopperDown('right') },
  { id: 'stopper.downShort', acts: stopperDown('short') },
  { id: 'stopper.firm', acts: squeezed(1) },
  { id: 'stopper.lightly', acts: squeezed(0.4) },
  {
    id: 'stopper.slacken',
    acts: one(({ stopper }) => (stopper.squeezeTurns > 0 ? { kind: 'innerRod.turn', turns: -10 } : null)),
  },
  {
    id: 'latch.off',
    acts: one(({ rod }) => (rod.load === 'stopper' ? { kind: 'rod.turn', turns: 1 / 4 } : null)),
  },
  {
    id: 'latch.on',
    acts: one(({ rod }) => (rod.engaged === 'stopper' ? { kind: 'rod.turn', turns: -1 / 4 } : null)),
  },
  {
    id: 'rod.back',
    acts: one(({ rod }) =>
      rod.engaged === null || rod.engaged === 'stopper' ? null : { kind: 'rod.turn', turns: -FAR_TURNS },
    ),
  },
  {
    id: 'rod.in',
    acts: function* (look, limits) {
      const { engaged } = look().rod;
      if (engaged !== null && engaged !== 'stopper') yield* rodIn(look, limits);
    },
  },
  {
    id: 'keeper.pull',
    acts: one(({ keeper }) =>
      keeper.torqueNm < 135 ? { kind: 'keeper.pull', torqueNm: 142, holdBack: true } : null,
    ),
  },
  {
    id: 'closing.byHand',
    acts: places('closingPlug'),
  },
  {
    id: 'main.isolate',
    acts: function* (look) {
      if (look().site.done.findShutoff === undefined) yield { kind: 'site.do', task: 'findShutoff' };
      yield { kind: 'main.isolate' };
    },
  },
];
