import { pieces, rigJoint } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { cutAtM, SAW_GAP_M } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import { leaned, type Stand } from './stand.ts';
import type { CellGas, GasView } from './view.ts';
import { stopperZM } from './workpiece.ts';

/** Gas is drawn this much inside the walls that hold it, m. */
const OFF_WALL_M = 0.00025;
/** Facets of a wall cut its corners by at most this share of the radius. */
const FACET_SHARE = 0.992;
const SHORT_M = 0.0004;
/** Depth of the thread in the tee's top, m. */
const TOP_THREAD_M = 0.0195;

/** The round bodies of gas that make up each cell, as the rig stands. */
export function gasBodies(rig: RigState, stand: Stand, cells: readonly CellGas[]): GasView[] {
  const { mainNps, teeSize } = rig.job.workpiece;
  const { geometry } = stand;
  const tee = pieces.serviceTee.dims(teeSize);
  const hole = pieces.coupling.dims(teeSize).boreM / 2;
  const main = pieces.main.dims(mainNps);
  const bodies: Omit<GasView, 'gaugePa' | 'gasFraction'>[] = [];
  const body = (cell: string, from: Vec3, to: Vec3, radiusM: number) =>
    bodies.push({ cell, from, to, radiusM: radiusM * FACET_SHARE - OFF_WALL_M });
  const upright = (cell: string, low: number, high: number, radiusM: number) => {
    if (high - low > 2 * SHORT_M) body(cell, [0, 0, low + SHORT_M], [0, 0, high - SHORT_M], radiusM);
  };
  const half = main.lengthM / 2 - 0.001;
  body('main', [-half, 0, -main.odM / 2], [half, 0, -main.odM / 2], main.idM / 2);

  const lift = rig.tee.turnsBack * stand.pitchM;
  const below = -main.odM / 2 + main.idM / 2 - 0.004;
  if (rig.tee.at === 'coupling') {
    const foot = geometry.teeMaleEndZM + lift;
    const stopper = stopperZM(rig, stand);
    const inBore = stopper !== null && stopper < geometry.bossZM && rig.stopper.squeezeTurns > 0;
    const { belowTopM, nutM } = pieces.boreStopper.dims(teeSize);
    const underStopper = inBore ? stopper - belowTopM + nutM : foot;
    const overStopper = inBore ? stopper : foot;
    upright('main', below, foot, hole);
    upright('main', foot - SHORT_M, Math.max(foot, underStopper), tee.lowerBoreM / 2);
    const port = geometry.portUndersideZM + lift;
    upright('barrel', overStopper, port, tee.lowerBoreM / 2);
    const boss = geometry.bossZM + lift;
    upright('barrel', port - SHORT_M, boss - TOP_THREAD_M, tee.portIdM / 2);
    if (rig.plug.at !== 'tee' && rig.keeper.at !== 'tee') {
      upright('barrel', boss - TOP_THREAD_M - SHORT_M, boss, tee.maleOdM / 2 - 0.002);
    }
    const axis = geometry.portAxisZM + lift;
    const cut = rig.branch.cut === 'through';
    const out = cut
      ? rig.tee.trim === 'whole'
        ? cutAtM(tee.axisToBossM)
        : tee.bodyOdM / 2
      : tee.axisToBossM - 0.017;
    body('barrel', [0, tee.portIdM * 0.4, axis], [0, out, axis], tee.portIdM / 2 - (cut ? 0.004 : 0.0005));
  } else {
    const closed = rig.closing.at === 'coupling';
    upright('main', below, geometry.couplingTopZM - (closed ? 0.0168 : 0), hole);
  }
  const service = pieces.serviceLine.dims(rig.job.system.service.nps);
  const start =
    rig.branch.cut === 'through' ? cutAtM(tee.axisToBossM) + SAW_GAP_M + 0.001 : tee.axisToBossM - 0.016;
  body(
    'service1',
    [0, start, geometry.portAxisZM],
    [0, service.shownLengthM - 0.001, geometry.portAxisZM],
    service.idM / 2,
  );
  stackBodies(stand, rig, body);

  const found = new Map(cells.map((c) => [c.id, c]));
  return bodies.flatMap((b) => {
    const cell = found.get(b.cell);
    return cell ? [{ ...b, gaugePa: cell.gaugePa, gasFraction: cell.gasFraction }] : [];
  });
}

/** Chamber under the ball, the ball's own bore, and what stands above it. */
function stackBodies(
  stand: Stand,
  rig: RigState,
  body: (cell: string, from: Vec3, to: Vec3, radiusM: number) => void,
): void {
  if (stand.seatZM === null) return;
  const r = rigJoint.boreM / 2;
  const at = (z: number): Vec3 => leaned(stand, 0, 0, z);
  const closers = ['testHead', 'sightCap', 'rodBarrel', 'valveCap'];
  const last = stand.standing[stand.standing.length - 1];
  const cavity: Partial<Record<string, number>> = {
    testHead: pieces.testHead.dims().cavityM,
    sightCap: pieces.sightCap.dims().cavityM,
    rodBarrel: pieces.rodBarrel.dims().cavityM,
    valveCap: 0.002,
  };
  const top = closers.includes(last.kind) ? last.seatZM + (cavity[last.kind] ?? 0) : last.topZM;
  const { ballZM } = stand;
  if (ballZM === null) {
    body('chamber', at(stand.seatZM + SHORT_M), at(top - SHORT_M), r);
    return;
  }
  const half = pieces.isolationValve.dims().ballBoreLengthM / 2;
  body('chamber', at(stand.seatZM + SHORT_M), at(ballZM - half - SHORT_M), r);
  const [c, s] = [Math.cos(rig.valve.openRad), Math.sin(rig.valve.openRad)];
  const centre = at(ballZM);
  const end = (sign: number): Vec3 => [centre[0] + sign * half * c, centre[1], centre[2] - sign * half * s];
  body('chamber', end(-1), end(1), r);
  body('above', at(ballZM + half + SHORT_M), at(top - SHORT_M), r);
}
