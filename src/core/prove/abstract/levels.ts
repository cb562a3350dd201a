import {
  collarEven,
  handTightTurns,
  hasValve,
  OPEN_RAD,
  SHUT_RAD,
  stopperHoldsN,
  stopperInBore,
  stopperThrustN,
  topPiece,
  type RigState,
} from '../../rig/index.ts';
import type { Gas, Stood } from './gas.ts';

/**
 * What the search tells apart: every piece that touches containment, and the levels it can stand at. Whatever is not
 * named here cannot come between the main and the hole (marks, looks, gauges, papers, tips lying on the bench) and is
 * projected out, so that the search closes. A spool goes with the piece it gives height to.
 */
export interface Level {
  readonly piece: string;
  readonly levels: readonly string[];
  readonly of: (rig: RigState, gas: Gas) => number;
}

/** A thread turned back by more than this is past the first bite of an eighth of a turn. */
const BITE_TURNS = 0.13;
const BACK_TURNS = 0.01;
/** Turns past snug from which a leg bears. */
const DRAWN_TURNS = 0.1;

const index = (levels: readonly string[], level: string): number => levels.indexOf(level);

function level(piece: string, levels: readonly string[], of: (rig: RigState, gas: Gas) => string): Level {
  return { piece, levels, of: (rig, gas) => index(levels, of(rig, gas)) };
}

const yesNo = (piece: string, is: (rig: RigState, gas: Gas) => boolean): Level => ({
  piece,
  levels: ['no', 'yes'],
  of: (rig, gas) => (is(rig, gas) ? 1 : 0),
});

function threadLevel(turnsBack: number): string {
  if (turnsBack < BACK_TURNS) return 'tight';
  return turnsBack <= BITE_TURNS ? 'bitten' : 'loose';
}

/** Drawn up by a wrench past where the rod leaves it. */
export const isPulled = (engagedTurns: number, job: RigState['job']): boolean =>
  engagedTurns > handTightTurns(job);

/** A closing plug that is in as far as bars a main. */
export const isTight = (engagedTurns: number, job: RigState['job']): boolean =>
  engagedTurns > handTightTurns(job) + 1;

export const levels: readonly Level[] = [
  level('top plug', ['tight', 'bitten', 'loose', 'rod', 'out'], ({ plug }) =>
    plug.at === 'tee' ? threadLevel(plug.turnsBack) : plug.at,
  ),
  level('tee', ['tight', 'bitten', 'loose', 'rod', 'out'], ({ tee }) =>
    tee.at === 'coupling' ? threadLevel(tee.turnsBack) : tee.at,
  ),
  level('branch', ['whole', 'pilot', 'pilot plugged', 'through'], ({ branch }) =>
    branch.cut === 'pilot' && branch.pilotPlugged ? 'pilot plugged' : branch.cut,
  ),
  yesNo('seat ring', ({ seatRing }) => seatRing.piece !== null),
  yesNo('second seat', (rig) => rig.collar.gasket !== null && collarEven(rig)),
  level('saddle', ['board', 'tee', 'coupling'], ({ saddle }) => saddle.on),
  level('chains', ['off', 'hooked', 'drawn'], ({ chains }) => {
    if (!chains.some((chain) => chain.hooked)) return 'off';
    const drawn = chains.every((c) => c.hooked && Math.min(c.left, c.right) > DRAWN_TURNS);
    return drawn ? 'drawn' : 'hooked';
  }),
  level('isolation valve', ['off', 'shut', 'open'], (rig) => {
    if (!hasValve(rig)) return 'off';
    return rig.valve.openRad >= OPEN_RAD ? 'open' : 'shut';
  }),
  level('top', ['none', 'testHead', 'sightCap', 'rodBarrel', 'valveCap'], (rig) => {
    const top = topPiece(rig);
    return top === null ? 'none' : rig.kit[top].kind;
  }),
  yesNo('outlet', (rig) => {
    const top = topPiece(rig);
    const kind = top === null ? null : rig.kit[top].kind;
    if (kind === 'testHead') return rig.testHead.ventOpen > 0;
    return (kind === 'rodBarrel' || kind === 'sightCap') && rig.bleed.openRad > SHUT_RAD;
  }),
  level('rod', ['up', 'down', 'engaged'], ({ rod }) => {
    if (rod.engaged !== null) return 'engaged';
    return rod.travelM > 0.001 ? 'down' : 'up';
  }),
  yesNo('rod held', ({ rod }) => rod.held),
  level('tip', ['none', 'socket', 'holder'], ({ rod, kit }) => {
    if (rod.tip === null) return 'none';
    return kit[rod.tip].kind === 'socket' ? 'socket' : 'holder';
  }),
  level('stopper', ['board', 'holder', 'bore', 'short', 'lost'], (rig) => {
    if (rig.stopper.at === 'board') return 'board';
    if (rig.stopper.at === 'lost') return 'lost';
    if (rig.stopper.at === 'set') return rig.stopper.belowPortM >= 0 ? 'bore' : 'short';
    return stopperInBore(rig) && rig.stopper.belowPortM >= 0 ? 'bore' : 'holder';
  }),
  yesNo('stopper latched', ({ stopper }) => stopper.at === 'holder'),
  level('squeeze', ['none', 'slack', 'firm'], (rig) => {
    if (rig.stopper.torqueNm <= 0) return 'none';
    return holds(rig) ? 'firm' : 'slack';
  }),
  level('keeper', ['board', 'rod', 'run in', 'pulled'], ({ keeper, job }) => {
    if (keeper.at !== 'tee') return keeper.at;
    return isPulled(keeper.engagedTurns, job) ? 'pulled' : 'run in';
  }),
  level('closing plug', ['board', 'rod', 'run in', 'tight'], ({ closing, job }) => {
    if (closing.at !== 'coupling') return closing.at;
    return isTight(closing.engagedTurns, job) ? 'tight' : 'run in';
  }),
  level('gas', ['none', 'chamber', 'above', 'both'], (_, { chamber, above }) =>
    chamber ? (above ? 'both' : 'chamber') : above ? 'above' : 'none',
  ),
  yesNo('barrel live', (_, { barrel }) => barrel),
  yesNo('blowing', (_, { blowing }) => blowing),
];

/** Freshly squeezed, its friction outdoes the whole thrust of the main. */
export function holds(rig: RigState): boolean {
  const thrustN = stopperThrustN(rig, rig.job.system.mainPressureGaugePa, 0);
  return stopperHoldsN(rig, rig.stopper.squeezedAtS) > thrustN;
}

/** One number for all levels of a rig: equal numbers are one state of the search. Below 2^53 by the table above. */
export function keyOf({ rig, gas }: Stood): number {
  let key = 0;
  for (const one of levels) key = key * one.levels.length + one.of(rig, gas);
  return key;
}

/** The level at which a piece stands, in words. */
export function wordLevels({ levels: names, of }: Level, { rig, gas }: Stood): string {
  return names[of(rig, gas)];
}
