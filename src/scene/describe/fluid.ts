import { pieces, rigJoint } from '../../core/catalogue/index.ts';
import type { LeakPlace, RigState } from '../../core/rig/index.ts';
import { cutAtM } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import { leaned, type Stand } from './stand.ts';
import type { FluidView, Shown } from './view.ts';

/** Where leak-detection fluid was brushed on, as a level ring round a joint. */
export function fluidViews(rig: RigState, stand: Stand, shown: Shown): FluidView[] {
  return shown.fluid.flatMap(({ at, gasMolPerS }) => {
    const ring = fluidRing(rig, stand, at);
    return ring ? [{ at, gasMolPerS, centre: ring.centre, radiusM: ring.radiusM }] : [];
  });
}

/** The ring of a joint that fluid is brushed on; null while that joint does not exist. */
export function fluidRing(
  rig: RigState,
  stand: Stand,
  at: LeakPlace,
): { centre: Vec3; radiusM: number } | null {
  const { teeSize } = rig.job.workpiece;
  const { geometry: g } = stand;
  const lift = rig.tee.turnsBack * stand.pitchM;
  const tee = pieces.serviceTee.dims(teeSize);
  const coupling = pieces.coupling.dims(teeSize);
  const skirt = rigJoint.skirtOdM / 2;
  const level = (zM: number, radiusM: number) => ({ centre: [0, 0, zM] as Vec3, radiusM });
  const onStack = (zM: number, radiusM: number) => ({ centre: leaned(stand, 0, 0, zM), radiusM });
  const piece = (...kinds: string[]) => stand.standing.find((s) => kinds.includes(s.kind));
  const below = (s: { seatZM: number } | undefined) => (s ? onStack(s.seatZM - 0.022, skirt) : null);
  switch (at) {
    case 'plug':
    case 'keeper':
      return level(g.bossZM + lift + 0.001, tee.maleOdM / 2 + 0.001);
    case 'teeThread':
      return level(g.couplingTopZM + 0.001, coupling.odM / 2 - 0.002);
    case 'weld':
      return level(0.005, coupling.odM / 2 + coupling.weldLegM);
    case 'seat':
      return stand.seatZM === null
        ? null
        : onStack(stand.seatZM - 0.01, rig.saddle.on === 'tee' ? 0.024 : skirt);
    case 'valveJoint':
      return below(piece('isolationValve'));
    case 'spoolJoint':
      return below(piece('lowerSpool', 'upperSpool'));
    case 'topJoint':
      return below(piece('testHead', 'sightCap', 'rodBarrel', 'valveCap'));
    case 'gland': {
      const barrel = piece('rodBarrel');
      const { glandHeightM } = pieces.rodBarrel.dims();
      return barrel ? onStack(barrel.topZM + glandHeightM + 0.001, 0.011) : null;
    }
    case 'closingPlug':
      return level(g.couplingTopZM + 0.001, tee.maleOdM / 2 + 0.001);
    case 'newPlug':
      return level(g.bossZM + lift + 0.001, tee.maleOdM / 2 + 0.001);
    case 'tieIn':
      return {
        centre: [0, pieces.renewalTee.dims(teeSize).bodyOdM / 2 + 0.03, g.portAxisZM + lift],
        radiusM: 0.012,
      };
    case 'benchTee':
    case 'lineEnds':
      return null;
    case 'cutEnd':
      return { centre: [0, cutAtM(tee.axisToBossM) + 0.004, g.portAxisZM + 0.016], radiusM: 0.006 };
  }
}
