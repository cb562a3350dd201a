import { pieces } from '../../core/catalogue/index.ts';
import type { Action, KitKind, LeakPlace, RigState } from '../../core/rig/index.ts';
import { cutAtM } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import { outletAt } from './cables.ts';
import { fluidRing } from './fluid.ts';
import { leaned, type Stand } from './stand.ts';
import type { WorkView } from './view.ts';

/** Actions that happen on the rig, and so can be looked at. */
const placed: ReadonlySet<Action['kind']> = new Set([
  'look',
  'measure',
  'clean',
  'leakFluid.apply',
  'mark',
  'piece.place',
  'piece.remove',
  'chain.hook',
  'chain.tap',
  'tensioner.turn',
  'valve.turn',
  'vent.turn',
  'pump.stroke',
  'bleed.turn',
  'rod.hold',
  'rod.move',
  'rod.turn',
  'innerRod.turn',
  'collar.set',
  'plug.turn',
  'tee.turn',
  'keeper.pull',
  'bond.clamp',
  'branch.cut',
  'tee.trim',
  'gaugeRing.try',
  'service.purge',
  'collarBolt.turn',
]);

export const hasPlace = (action: Action): boolean =>
  placed.has(action.kind) ||
  (action.kind === 'gauge.read' && action.gauge === 'head') ||
  (action.kind === 'site.do' && action.task === 'coat');

const close = (target: Vec3, tallM: number): WorkView => ({ target, tallM, as: 'section' });

/** Where the hands were last at work, and how much of it must be seen; null where that is the whole rig. */
export function workView(rig: RigState, stand: Stand, action: Action | null): WorkView | null {
  if (action === null) return null;
  const { geometry: g } = stand;
  const up = (zM: number, tallM: number): WorkView => close(leaned(stand, 0, 0, zM), tallM);
  const boss = up(g.bossZM, 0.2);
  const coupling = up(g.couplingTopZM, 0.2);
  const tip = stand.tipZM === null ? null : up(stand.tipZM - 0.02, 0.26);
  switch (action.kind) {
    case 'look':
      return lookedAt(rig, stand, action.at);
    case 'clean':
      return action.at === 'boss' ? boss : coupling;
    case 'mark':
      return action.at === 'tee' ? coupling : action.at === 'portLine' ? up(g.portAxisZM, 0.2) : boss;
    case 'plug.turn':
    case 'keeper.pull':
      return boss;
    case 'tee.turn':
    case 'site.do':
      return coupling;
    case 'leakFluid.apply':
      return ringed(rig, stand, action.at);
    case 'piece.place':
    case 'piece.remove':
      return pieceAt(rig, stand, rig.kit[action.piece]?.kind);
    case 'chain.hook':
    case 'chain.tap':
      return chainAt(stand, action.chain, 0);
    case 'tensioner.turn':
      return chainAt(stand, action.chain, action.side === 'left' ? -1 : 1);
    case 'valve.turn':
      return stand.ballZM === null ? null : up(stand.ballZM, 0.34);
    case 'vent.turn':
    case 'pump.stroke':
    case 'gauge.read':
      return stand.topZM === null ? null : up(stand.topZM + 0.045, 0.26);
    case 'bleed.turn': {
      const outlet = outletAt(stand);
      return outlet ? close(leaned(stand, 0, outlet.yM - 0.03, outlet.zM), 0.26) : null;
    }
    case 'rod.hold':
    case 'rod.move':
    case 'rod.turn':
      return tip;
    case 'innerRod.turn':
      return up(g.portUndersideZM - 0.012, 0.15);
    case 'collar.set': {
      const barrel = stand.standing.find((s) => s.kind === 'rodBarrel');
      return barrel ? up(barrel.topZM + 0.12, 0.34) : null;
    }
    case 'measure':
      return stand.topZM === null ? boss : up((g.portUndersideZM + stand.topZM) / 2, stand.topZM - g.portUndersideZM + 0.08); // prettier-ignore
    case 'collarBolt.turn':
      // From above and from the side away from the service: both bolts are seen, the left one at the left.
      return { target: [0, 0, g.couplingTopZM], tallM: 0.24, as: 'whole', eye: [0, -0.5, 1] };
    case 'bond.clamp':
    case 'branch.cut':
    case 'tee.trim':
    case 'gaugeRing.try':
    case 'service.purge':
      return atCut(rig, stand);
    default:
      return null;
  }
}

function lookedAt(rig: RigState, stand: Stand, at: Extract<Action, { kind: 'look' }>['at']): WorkView | null {
  const { geometry: g } = stand;
  switch (at) {
    case 'downBore':
      return { target: [0, 0, g.bossZM], tallM: 0.1, as: 'sightCap' };
    case 'boss':
      return { target: [0, 0, g.bossZM], tallM: 0.18, as: 'whole' };
    case 'coupling':
    case 'gasketSeat':
      return { target: [0, 0, g.couplingTopZM / 2], tallM: 0.2, as: 'whole' };
    case 'wall':
    case 'wrap':
      return { target: [0, 0, -g.mainRadiusM * 0.5], tallM: 0.42, as: 'whole' };
    case 'chains':
      return rig.chains.some((c) => c.hooked) ? chainAt(stand, 0, 0) : null;
    case 'around':
    case 'hose':
      return null;
  }
}

function ringed(rig: RigState, stand: Stand, at: LeakPlace): WorkView | null {
  const ring = fluidRing(rig, stand, at);
  return ring ? close([0, ring.centre[1], ring.centre[2]], 0.18) : null;
}

/** Chains lie on both sides of the section: they are looked at whole, from the side worked on. */
function chainAt(stand: Stand, chain: number, side: -1 | 0 | 1): WorkView | null {
  if (stand.seatZM === null) return null;
  const { chainHalfSpanM } = pieces.saddle.dims();
  const x = chain === 0 ? chainHalfSpanM : -chainHalfSpanM;
  const z = stand.seatZM - (side === 0 ? 0.1 : 0.05);
  // All four tensioners are drawn up in turn: from above, none of them hides another.
  if (side !== 0)
    return { target: [0, 0, z], tallM: 0.32, as: 'whole', eye: [chain === 0 ? 0.8 : -0.8, side * 0.3, 0.8] };
  return {
    target: [x * 0.6, 0, z],
    tallM: 0.34,
    as: 'whole',
    eye: [chain === 0 ? 1 : -1, -0.8, 0.35],
  };
}

/** When a piece has come off the top, what stands is looked at, with a little room above it, m. */
const ABOVE_VIEW_M = 0.09;

function pieceAt(rig: RigState, stand: Stand, kind: KitKind | undefined): WorkView | null {
  const { geometry: g } = stand;
  const onStack = stand.standing.find((s) => s.kind === kind);
  if (onStack && kind !== 'saddle') {
    const middle = (onStack.seatZM + onStack.topZM) / 2;
    return close(leaned(stand, 0, 0, middle), Math.max(0.26, (onStack.topZM - onStack.seatZM) * 1.35));
  }
  switch (kind) {
    case 'seatRing':
      return close([0, 0, g.bossZM - 0.03], 0.22);
    case 'saddle':
      return close([0, 0, stand.seatZM === null ? g.bossZM - 0.05 : stand.seatZM + 0.02], 0.3);
    case 'chain':
    case 'cradleBlock':
      return chainAt(stand, 0, 0);
    case 'cupGasket':
    case 'splitCollar':
      return close([0, 0, g.couplingTopZM], 0.2);
    case 'serviceCap':
      return atCut(rig, stand);
    default:
      return stand.topZM === null ? null : close(leaned(stand, 0, 0, stand.topZM - ABOVE_VIEW_M), 0.3);
  }
}

function atCut(rig: RigState, { geometry: g }: Stand): WorkView {
  const y = cutAtM(pieces.serviceTee.dims(rig.job.workpiece.teeSize).axisToBossM);
  return close([0, y * 0.6, g.portAxisZM], 0.22);
}
