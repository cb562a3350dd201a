import { OPEN_RAD, type LeakPlace, type LookPlace } from './actions.ts';
import type { Bubbles, Sight } from './facts.ts';
import type { Hindrance } from './hindrance.ts';
import { mainGaugePa } from './mainFeed.ts';
import { hasValve, teeInside, topPiece } from './network.ts';
import { houseCell, joined, mainEndCapped } from './line.ts';
import { handTightTurns, renewed } from './reach.ts';
import { chainSet, seating } from './seats.ts';
import type { Sense } from './sense.ts';
import { seenAround, seenOnHose, seenOnWall, troubleSize } from './troubles.ts';
import type { RigState, ThreadState } from './state.ts';

/** What an eye finds there; null where something covers it. */
export function sightFrom(rig: RigState, at: LookPlace, sense: Sense): Sight | null {
  const { workpiece } = rig.job;
  switch (at) {
    case 'boss':
      if (rig.seatRing.piece !== null || rig.saddle.on === 'tee') return null;
      if (renewed(rig)) return { visible: true, face: 'sound' };
      return { visible: true, face: rig.site.cleaned.boss ? workpiece.boss : dirtyFace(workpiece.boss) };
    case 'coupling':
      if (rig.collar.gasket !== null || teeInside(rig)) return null;
      return { visible: true, face: rig.site.cleaned.coupling ? 'sound' : 'dirty' };
    case 'wall': {
      const wallSigns = seenOnWall(rig);
      return {
        visible: true,
        wallSound: workpiece.wallSound,
        ...(wallSigns.length > 0 && { signs: wallSigns }),
      };
    }
    case 'wrap':
      return { visible: true, wrap: workpiece.wrap };
    case 'gasketSeat':
      if (rig.collar.gasket !== null || teeInside(rig)) return null;
      return {
        visible: true,
        face: rig.site.cleaned.coupling ? 'sound' : 'dirty',
        ...(troubleSize(rig, 'weldBead') > 0 && { signs: ['weldBead'] as const }),
      };
    case 'around':
      return { visible: true, signs: seenAround(rig) };
    case 'hose':
      return rig.hose === 'none' ? null : { visible: true, signs: seenOnHose(rig) };
    case 'chains':
      if (chainSet(rig).legs === 0) return { visible: true, chainsBear: false };
      return { visible: true, chainsBear: seating(rig).clampN > 200 };
    case 'downBore':
      return downBore(rig, sense);
  }
}

/** Rust that is more than dirt shows through it. */
function dirtyFace(face: 'sound' | 'pitted' | 'beyondUse'): Sight['face'] {
  return face === 'beyondUse' ? 'beyondUse' : 'dirty';
}

function downBore(rig: RigState, sense: Sense): Sight | null {
  const top = topPiece(rig);
  if (rig.saddle.on === 'board') {
    // from the hole, with nothing over the tee or coupling
    if (rig.tee.at === 'coupling' && (rig.plug.at === 'tee' || rig.keeper.at === 'tee')) return null;
    return { visible: true, ...tubeSight(rig, sense) };
  }
  if (top !== null && rig.kit[top].kind !== 'sightCap') return null;
  if (hasValve(rig) && rig.valve.openRad < OPEN_RAD) return { visible: false };
  return { visible: true, ...tubeSight(rig, sense) };
}

function tubeSight(rig: RigState, sense: Sense): Omit<Sight, 'visible'> {
  if (rig.tee.at === 'coupling') {
    if (rig.plug.at === 'tee') return { plugIn: true };
    if (rig.keeper.at === 'tee') return { plugIn: true, stopperSeen: false };
    if (rig.renewal.plug.at === 'tee') return { plugIn: true, ...threadedSight(rig, rig.renewal.plug) };
    const scale = rig.job.workpiece.boreScale && !rig.site.cleaned.bore && !renewed(rig);
    if (rig.stopper.at !== 'set') return { plugIn: false, boreClear: !scale, stopperSeen: false };
    return {
      plugIn: false,
      boreClear: true,
      stopperSeen: true,
      stopperSquare: rig.stopper.tiltRad <= 0.0524,
      stopperBelowPortM: Math.floor(rig.stopper.belowPortM * 1000 + 0.5) / 1000,
      stopperDry: sense.flowMolPerS('bore') < 1e-4,
    };
  }
  if (rig.closing.at === 'coupling') {
    return { plugIn: true, ...threadedSight(rig, rig.closing) };
  }
  return { plugIn: false, threadsSound: troubleSize(rig, 'threadWorn') <= 0, stopperSeen: false };
}

/** The old service's cut end is joined to the renewal tee: there is no end any more. */
function rejoined(rig: RigState): boolean {
  return joined(rig) && houseCell(rig.job).startsWith('service');
}

/** A plug seen from above: square or not, and how many of its threads still show. */
function threadedSight(rig: RigState, plug: ThreadState): Omit<Sight, 'visible'> {
  const past = plug.engagedTurns - handTightTurns(rig.job);
  return { closingSquare: !plug.crossed, closingTurnsShown: Math.max(0, 3 - past) };
}

/** Moles a second at which bubbles show (ASTM E515: 1e-4 std cm³/s), stream and blow the fluid away. */
const FINE_MOL_PER_S = 4.4615e-9;
const STEADY_MOL_PER_S = 1e-6;
const BLOWING_MOL_PER_S = 1e-4;

/** How a flow shows under leak-detection fluid. */
export function bubblesFor(molPerS: number): Bubbles {
  if (molPerS < FINE_MOL_PER_S) return 'none';
  if (molPerS < STEADY_MOL_PER_S) return 'fine';
  return molPerS < BLOWING_MOL_PER_S ? 'steady' : 'blowing';
}

interface LeakSpot {
  readonly link: string;
  readonly cell: string;
  readonly reachable: boolean;
  readonly there: boolean;
}

/** What leak-detection fluid shows at a place, or why it cannot be put there. */
export function leakLook(
  rig: RigState,
  at: LeakPlace,
  sense: Sense,
): Hindrance | { bubbles: Bubbles; gasMolPerS: number; pressureGaugePa: number } {
  const spot = leakSpot(rig, at);
  if (!spot.there) return 'notFitted';
  if (!spot.reachable) return 'covered';
  const gasMolPerS = spot.link === '' ? 0 : sense.flowMolPerS(spot.link);
  const pressureGaugePa = spot.cell === 'main' ? mainGaugePa(rig, sense) : sense.gaugePa(spot.cell);
  return { bubbles: bubblesFor(gasMolPerS), gasMolPerS, pressureGaugePa };
}

function leakSpot(rig: RigState, at: LeakPlace): LeakSpot {
  const bare = rig.saddle.on === 'board';
  const outside = !teeInside(rig) && rig.collar.gasket === null;
  const has = (kind: string): boolean => rig.stack.some((p) => p.kind === kind);
  switch (at) {
    case 'plug':
      return { link: 'plug', cell: 'barrel', reachable: bare, there: rig.plug.at === 'tee' };
    case 'keeper':
      return { link: 'keeper', cell: 'barrel', reachable: bare, there: rig.keeper.at === 'tee' };
    case 'teeThread':
      return { link: 'teeThread', cell: 'main', reachable: outside, there: rig.tee.at === 'coupling' };
    case 'weld':
      return { link: 'weld', cell: 'main', reachable: !teeInside(rig), there: true };
    case 'seat':
      return { link: 'seat', cell: 'chamber', reachable: true, there: !bare };
    case 'valveJoint':
      return { link: 'joint:isolationValve', cell: 'chamber', reachable: true, there: has('isolationValve') };
    case 'spoolJoint':
      return has('lowerSpool')
        ? { link: 'joint:lowerSpool', cell: 'chamber', reachable: true, there: true }
        : { link: 'joint:upperSpool', cell: 'above', reachable: true, there: has('upperSpool') };
    case 'topJoint':
      return { link: 'joint:top', cell: 'above', reachable: true, there: topPiece(rig) !== null };
    case 'gland':
      return { link: 'gland', cell: 'above', reachable: true, there: has('rodBarrel') };
    case 'closingPlug':
      return { link: 'closing', cell: 'main', reachable: bare, there: rig.closing.at === 'coupling' };
    case 'benchTee':
      return { link: 'benchTee', cell: 'bench', reachable: true, there: rig.testSet.on === 'bench' };
    case 'lineEnds': {
      const there = rig.job.system.renewal !== undefined && (mainEndCapped(rig) || joined(rig));
      return { link: 'lineEnds', cell: houseCell(rig.job), reachable: true, there };
    }
    case 'tieIn':
      return { link: 'tieIn', cell: 'barrel', reachable: true, there: joined(rig) };
    case 'newPlug':
      return { link: 'plug', cell: 'barrel', reachable: bare, there: rig.renewal.plug.at === 'tee' };
    case 'cutEnd':
      return {
        link: 'serviceEnd',
        cell: 'service1',
        reachable: true,
        there: rig.branch.cut === 'through' && !rejoined(rig),
      };
  }
}
