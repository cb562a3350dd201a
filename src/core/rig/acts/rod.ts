import { constants } from '../../catalogue/index.ts';
import { rodPushN } from '../../physics/index.ts';
import type { FactBody } from '../facts.ts';
import type { Hindrance } from '../hindrance.ts';
import { OPEN_RAD } from '../actions.ts';
import { hasValve } from '../network.ts';
import { barrelOn, rodGland } from '../rodFree.ts';
import { mainGaugePa } from '../mainFeed.ts';
import {
  ballUpTravelM,
  elevations,
  geometryOf,
  madeUpTurns,
  renewed,
  tipFloor,
  travelForTip,
} from '../reach.ts';
import { fallThrough } from '../strikes.ts';
import { stopperInBore, stopperKeepsRod, stopperThrustN } from '../stopping.ts';
import type { RigState, RodLoad } from '../state.ts';
import type { Sense } from '../sense.ts';
import { did, onBoard, tidy, withPiece, type Acts, type Outcome } from './outcome.ts';
import { turnRod } from './rodTurn.ts';
import { innerTurn, withDepth } from './stopper.ts';

const c = constants;

/** The rod: its tip, what hangs on it, and its travel. */
export const rodActs: Acts<
  'rod.fit' | 'rod.load' | 'rod.hold' | 'rod.move' | 'rod.turn' | 'innerRod.turn' | 'collar.set'
> = {
  'rod.fit': (rig, { tip }) => {
    if (barrelOn(rig)) return 'barrelOn';
    if (rig.rod.load !== null) return 'occupied';
    const bare = rig.rod.tip === null ? rig : withPiece(rig, rig.rod.tip, { where: 'board' });
    if (tip === null)
      return rig.rod.tip === null ? 'alreadyDone' : did({ ...bare, rod: { ...bare.rod, tip: null } });
    const piece = onBoard(bare, tip);
    if (typeof piece === 'string') return piece;
    if (!['socket', 'stopperHolder', 'magnet'].includes(piece.kind)) return 'doesNotFit';
    const on = withPiece(bare, tip, { where: 'rod' });
    return did({ ...on, rod: { ...on.rod, tip } }, { fact: 'piece.placed', piece: tip, fits: true });
  },
  'rod.load': (rig, { piece: id }) =>
    barrelOn(rig) ? 'barrelOn' : id === null ? unload(rig) : loadWith(rig, id),
  'rod.hold': (rig, { held }) => {
    if (!barrelOn(rig)) return 'needsBarrel';
    return rig.rod.held === held ? 'alreadyDone' : did({ ...rig, rod: { ...rig.rod, held, resting: false } });
  },
  'rod.move': (rig, { lengthM }, sense) => {
    if (!barrelOn(rig)) return 'needsBarrel';
    return lengthM >= 0 ? lower(rig, lengthM, sense) : raise(rig, -lengthM, sense);
  },
  'rod.turn': (rig, { turns }, sense) => (barrelOn(rig) ? turnRod(rig, turns, sense) : 'needsBarrel'),
  'innerRod.turn': (rig, { turns }, sense) => innerTurn(rig, turns, sense),
  'collar.set': (rig, { travelM }) => {
    if (travelM !== null && travelM < rig.rod.travelM) return 'atStop';
    return did({ ...rig, rod: { ...rig.rod, collarTravelM: travelM } });
  },
};

function unload(rig: RigState): Outcome {
  switch (rig.rod.load) {
    case null:
      return 'needsLoad';
    case 'plug':
      return did({ ...rig, plug: { ...rig.plug, at: 'out' }, rod: { ...rig.rod, load: null } });
    case 'tee': {
      const out: RigState = { ...rig, tee: { ...rig.tee, at: 'out' }, rod: { ...rig.rod, load: null } };
      return did(out);
    }
    case 'stopper': {
      const off = rig.stopper.piece === null ? rig : withPiece(rig, rig.stopper.piece, { where: 'board' });
      return did({
        ...off,
        stopper: { ...rig.stopper, piece: null, at: 'board', torqueNm: 0, squeezeTurns: 0 },
        rod: { ...rig.rod, load: null },
      });
    }
    case 'keeper': {
      const off = rig.keeper.piece === null ? rig : withPiece(rig, rig.keeper.piece, { where: 'board' });
      return did({
        ...off,
        keeper: { ...rig.keeper, piece: null, at: 'board' },
        rod: { ...rig.rod, load: null },
      });
    }
    case 'renewal': {
      const { piece } = rig.renewal;
      const off = piece === null ? rig : withPiece(rig, piece, { where: 'board' });
      return did({ ...off, renewal: { ...rig.renewal, at: 'board' }, rod: { ...rig.rod, load: null } });
    }
    case 'newPlug': {
      const { plug } = rig.renewal;
      const off = plug.piece === null ? rig : withPiece(rig, plug.piece, { where: 'board' });
      const renewal = { ...rig.renewal, plug: { ...plug, piece: null, at: 'board' } as const };
      return did({ ...off, renewal, rod: { ...rig.rod, load: null } });
    }
    case 'closing': {
      const off = rig.closing.piece === null ? rig : withPiece(rig, rig.closing.piece, { where: 'board' });
      return did({
        ...off,
        closing: { ...rig.closing, piece: null, at: 'board' },
        rod: { ...rig.rod, load: null },
      });
    }
  }
}

function loadWith(rig: RigState, id: string): Outcome {
  if (rig.rod.tip === null) return 'needsTip';
  if (rig.rod.load !== null) return 'occupied';
  const tip = rig.kit[rig.rod.tip].kind;
  if (id === 'topPlug') return loadPlug(rig, tip);
  const piece = onBoard(rig, id);
  if (typeof piece === 'string') return piece;
  const fits = piece.trueSize === rig.job.workpiece.teeSize;
  const on = withPiece(rig, id, { where: 'rod' });
  const fact: FactBody = { fact: 'piece.placed', piece: id, fits };
  switch (piece.kind) {
    case 'boreStopper':
      if (tip !== 'stopperHolder') return 'wrongTip';
      if (['holder', 'set', 'fallen'].includes(rig.stopper.at)) return 'occupied';
      return did(
        {
          ...on,
          stopper: { ...on.stopper, piece: id, at: 'holder', belowPortM: -1, torqueNm: 0, squeezeTurns: 0 },
          rod: { ...on.rod, load: 'stopper', turns: 0 },
        },
        fact,
      );
    case 'keeperPlug':
      if (tip !== 'socket') return 'wrongTip';
      if (rig.kit[rig.rod.tip].trueSize !== piece.trueSize) return 'doesNotFit';
      return did(
        {
          ...on,
          keeper: { ...on.keeper, piece: id, at: 'rod', engagedTurns: 0, torqueNm: 0 },
          rod: { ...on.rod, load: 'keeper' },
        },
        fact,
      );
    case 'renewalTee':
    case 'newTopPlug':
      if (tip !== 'socket') return 'wrongTip';
      if (rig.kit[rig.rod.tip].trueSize !== piece.trueSize) return 'doesNotFit';
      return piece.kind === 'newTopPlug'
        ? did(loadedPlug(on, id), fact)
        : rig.testSet.on === 'bench' || rig.renewal.at !== 'board'
          ? 'occupied'
          : did(loadedTee(on, id), fact);
    case 'closingPlug':
      if (tip !== 'socket') return 'wrongTip';
      if (rig.kit[rig.rod.tip].trueSize !== piece.trueSize) return 'doesNotFit';
      return did(
        {
          ...on,
          closing: { piece: id, at: 'rod', engagedTurns: 0, torqueNm: 0, crossed: false, threadFound: false },
          rod: { ...on.rod, load: 'closing' },
        },
        fact,
      );
    default:
      return 'doesNotFit';
  }
}

const fresh = { engagedTurns: 0, torqueNm: 0, crossed: false, threadFound: false } as const;

/** The renewal tee in the socket by its keeper's square. */
function loadedTee(rig: RigState, id: string): RigState {
  const renewal = { ...rig.renewal, ...fresh, piece: id, at: 'rod', mostTurns: 0 } as const;
  return { ...rig, renewal, rod: { ...rig.rod, load: 'renewal' } };
}

function loadedPlug(rig: RigState, id: string): RigState {
  const plug = { ...fresh, piece: id, at: 'rod' } as const;
  return { ...rig, renewal: { ...rig.renewal, plug }, rod: { ...rig.rod, load: 'newPlug' } };
}

/** The old top plug back into the socket. */
function loadPlug(rig: RigState, tip: string): Outcome {
  if (rig.plug.at !== 'out') return 'notOnBoard';
  if (tip !== 'socket') return 'wrongTip';
  return did({ ...rig, plug: { ...rig.plug, at: 'rod' }, rod: { ...rig.rod, load: 'plug' } });
}

function feltN(sense: Sense): number {
  return rodPushN(rodGland, sense.gaugePa('above'));
}

/** Down to the first thing met: the shut ball, the depth collar, or what stands below. */
function lower(rig: RigState, lengthM: number, sense: Sense): Outcome {
  if (rig.rod.engaged !== null) return 'atStop';
  let limit = c.rodStrokeM.value;
  let why: Hindrance = 'atStop';
  const ballUp = ballUpTravelM(rig);
  if (hasValve(rig) && rig.valve.openRad < OPEN_RAD && ballUp !== null && ballUp < limit) {
    limit = ballUp;
    why = 'ballInTheWay';
  }
  const floor = tipFloor(rig);
  const floorTravel = travelForTip(rig, floor.zM) ?? limit;
  if (floorTravel < limit) {
    limit = floorTravel;
    why = 'atStop';
  }
  if (rig.rod.collarTravelM !== null && rig.rod.collarTravelM < limit) {
    limit = rig.rod.collarTravelM;
    why = 'atCollar';
  }
  if (rig.rod.travelM >= limit - 1e-9 && !(floor.meets === rig.rod.load && floorTravel <= limit + 1e-9))
    return why;
  const travelM = tidy(Math.max(rig.rod.travelM, Math.min(limit, rig.rod.travelM + lengthM)));
  const moved = withDepth({ ...rig, rod: { ...rig.rod, travelM, resting: false } });
  if (jerksOff(rig, travelM - rig.rod.travelM)) return dropStopper(moved, travelM, sense);
  const facts: FactBody[] = [{ fact: 'rod.moved', travelM, feltN: feltN(sense) }];
  if (travelM < floorTravel - 1e-9 || !socketFits(rig, floor.meets)) return did(moved, ...facts);
  return engage(moved, floor.meets, facts);
}

/** A holder with a weak detent keeps its stopper through a gentle move and drops it at a quick one, m (assumed). */
const JERK_M = 0.08;

function jerksOff(rig: RigState, byM: number): boolean {
  if (rig.rod.load !== 'stopper' || rig.rod.tip === null || rig.stopper.torqueNm > 0) return false;
  return rig.kit[rig.rod.tip].defects.weakDetent === true && byM > JERK_M;
}

/** Not yet squeezed it is slimmer than the bore: it lies on the shut ball, hangs across the port, or is in the main. */
function dropStopper(rig: RigState, travelM: number, sense: Sense): Outcome {
  const moved: FactBody = { fact: 'rod.moved', travelM, feltN: feltN(sense) };
  const empty = { ...rig, rod: { ...rig.rod, load: null, engaged: null } };
  const ballZM =
    hasValve(rig) && rig.valve.openRad < OPEN_RAD ? (elevations(rig)?.ballClearZM ?? null) : null;
  if (ballZM === null) {
    const fallen = fallThrough(empty, sense);
    return did(fallen.rig, moved, ...fallen.facts);
  }
  const belowPortM = geometryOf(rig.job).portUndersideZM - ballZM;
  const stopper = { ...rig.stopper, at: 'fallen', belowPortM, squeezeTurns: 0 } as const;
  return did({ ...empty, stopper }, moved, { fact: 'stopper.dropped', into: 'valve' });
}

/** A square head takes only a socket of its own size; the holder takes only the stopper's stem. */
function socketFits(rig: RigState, meets: string): boolean {
  const tip = rig.rod.tip === null ? null : rig.kit[rig.rod.tip];
  if (tip === null) return false;
  if (meets === 'stopper') return tip.kind === (rig.stopper.at === 'fallen' ? 'magnet' : 'stopperHolder');
  if (['plug', 'keeper', 'closing', 'tee', 'renewal', 'newPlug'].includes(meets)) {
    return tip.kind === 'socket' && tip.trueSize === rig.job.workpiece.teeSize;
  }
  return false;
}

function engage(rig: RigState, meets: string, facts: FactBody[]): Outcome {
  if (meets === 'stopper' && rig.stopper.at === 'fallen') {
    // its washers are steel: it hangs on the magnet and comes up with it
    const hangs = { ...rig, stopper: { ...rig.stopper, at: 'holder' as const } };
    return did({ ...hangs, rod: { ...rig.rod, load: 'stopper' } }, ...facts, {
      fact: 'rod.engaged',
      with: meets,
    });
  }
  const engaged = meets as RodLoad;
  facts.push({ fact: 'rod.engaged', with: meets });
  return did({ ...rig, rod: { ...rig.rod, engaged, turns: 0 } }, ...facts);
}

/** Pulls it takes to work a jammed socket off a closing plug that is in its thread (assumed). */
const PULLS_TO_FREE = 3;

function jammed(rig: RigState): boolean {
  if (rig.rod.tip === null || rig.rod.engaged !== 'closing' || rig.closing.at !== 'coupling') return false;
  return rig.kit[rig.rod.tip].defects.jams === true && rig.rod.stuckPulls < PULLS_TO_FREE;
}

/** A socket with a weak spring keeps its plug through a gentle lift and loses it in a quick one. */
function socketLetsGo(rig: RigState, byM: number): boolean {
  if (rig.rod.tip === null || rig.rod.load !== 'plug' || byM <= JERK_M) return false;
  return rig.kit[rig.rod.tip].defects.looseGrip === true;
}

/** Turns of its thread that a plug fallen back upon the tee catches by (assumed). */
const FALLS_BACK_TURNS = 0.3;

/** The plug falls back on the open tee and lies in the start of its thread. */
function dropPlug(rig: RigState, travelM: number, sense: Sense): Outcome {
  const plug = { ...rig.plug, at: 'tee', turnsBack: madeUpTurns(rig.job) - FALLS_BACK_TURNS } as const;
  return did(
    { ...rig, plug, rod: { ...rig.rod, load: null, engaged: null, travelM, resting: false } },
    { fact: 'rod.moved', travelM, feltN: feltN(sense) },
    { fact: 'load.dropped', load: 'plug' },
  );
}

/** Up: a socket slips off what stays fixed; a free load comes along; a squeezed stopper holds. */
export function raise(rig: RigState, lengthM: number, sense: Sense): Outcome {
  if (rig.rod.travelM <= 0) return 'atStop';
  if (stopperKeepsRod(rig, sense.atS)) return 'heldByThread';
  if (jammed(rig)) {
    return did(
      { ...rig, rod: { ...rig.rod, stuckPulls: rig.rod.stuckPulls + 1 } },
      { fact: 'socket.stuck', on: 'closing' },
    );
  }
  const travelM = tidy(Math.max(0, rig.rod.travelM - lengthM));
  if (socketLetsGo(rig, lengthM)) return dropPlug(rig, travelM, sense);
  const up = withDepth({ ...rig, rod: { ...rig.rod, travelM, engaged: null, resting: false } });
  const moved: FactBody = { fact: 'rod.moved', travelM, feltN: feltN(sense) };
  const drawn = renewed(rig) && stopperInBore(rig) && !stopperInBore(up) && rig.stopper.at === 'holder';
  return drawn ? did(up, moved, drawnAgainst(rig, sense)) : did(up, moved);
}

/** What the gas still pushed the stopper with as it left its bore. */
function drawnAgainst(rig: RigState, sense: Sense): FactBody {
  const differenceGaugePa = mainGaugePa(rig, sense) - sense.gaugePa('barrel');
  const thrustN = stopperThrustN(rig, mainGaugePa(rig, sense), sense.gaugePa('barrel'));
  return { fact: 'stopper.drawn', differenceGaugePa, thrustN };
}
