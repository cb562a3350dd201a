import { pieces } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { COCK_REACH_M } from '../pieces/cock.ts';
import { BLEED_AT_M } from '../pieces/rodBarrel.ts';
import { cutAtM } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import { holeFloorZM } from './hole.ts';
import { leaned, type Stand } from './stand.ts';
import type { CableView } from './view.ts';

/** Where the cock of the piece on top ends: out from the axis and up, m. */
export function outletAt(stand: Stand): { yM: number; zM: number } | null {
  const last = stand.standing[stand.standing.length - 1];
  switch (last?.kind) {
    case 'rodBarrel':
      return { yM: 0.049 + COCK_REACH_M, zM: last.seatZM + BLEED_AT_M };
    case 'sightCap':
      return { yM: 0.049 + COCK_REACH_M, zM: last.seatZM + 0.03 };
    case 'testHead':
      return { yM: 0.05 + COCK_REACH_M, zM: last.seatZM + 0.022 };
    default:
      return null;
  }
}

/** The bleed hose, from the cock to its end; null while none is led. */
export function hosePath(rig: RigState, stand: Stand): Vec3[] | null {
  const outlet = outletAt(stand);
  const last = stand.standing[stand.standing.length - 1];
  if (outlet === null || rig.hose === 'none' || last.kind === 'sightCap') return null;
  const start = leaned(stand, 0, outlet.yM - 0.012, outlet.zM);
  const low = stand.geometry.couplingTopZM;
  const away = rig.hose === 'away';
  const through: Vec3[] = away
    ? [
        [0, outlet.yM + 0.06, outlet.zM - 0.01],
        [-0.02, outlet.yM + 0.15, outlet.zM + 0.05],
        [-0.1, 0.42, Math.max(outlet.zM + 0.2, holeFloorZM(rig) + rig.job.site.holeDepthM + 0.06)],
        [-0.2, 0.75, Math.max(outlet.zM + 0.15, holeFloorZM(rig) + rig.job.site.holeDepthM + 0.05)],
      ]
    : [
        [0, outlet.yM + 0.07, outlet.zM - 0.03],
        [-0.03, outlet.yM + 0.12, (outlet.zM + low) / 2],
        [-0.16, 0.26, low - 0.06],
        [-0.26, 0.3, holeFloorZM(rig) + 0.02],
      ];
  return smooth([start, leaned(stand, 0, outlet.yM + 0.02, outlet.zM), ...through]);
}

export function cableViews(rig: RigState, stand: Stand): CableView[] {
  const cables: CableView[] = [];
  const hose = hosePath(rig, stand);
  if (hose) cables.push({ id: 'hose', stuff: 'rubber', radiusM: 0.007, path: hose });
  const { tee, service } = rig.site.bonded;
  const { geometry: g } = stand;
  const dims = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  const pipe = pieces.serviceLine.dims(rig.job.system.service.nps).odM / 2;
  const cut = cutAtM(dims.axisToBossM);
  const onTee: Vec3 = [-0.02, 0, g.couplingTopZM + 0.008];
  const onPipe: Vec3 = [-pipe, cut + 0.12, g.portAxisZM];
  const loose: Vec3 = [-0.2, 0.3, holeFloorZM(rig) + 0.02];
  if (tee || service) {
    const from = tee && rig.tee.at === 'coupling' ? onTee : loose;
    const to = service ? onPipe : loose;
    const belly: Vec3 = [-0.13, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2 - 0.06];
    cables.push({ id: 'bond', stuff: 'brass', radiusM: 0.004, path: smooth([from, belly, to]) });
  }
  return cables;
}

/** Points along a smooth curve through the given ones (Catmull–Rom). */
function smooth(points: readonly Vec3[]): Vec3[] {
  const out: Vec3[] = [];
  const at = (i: number) => points[Math.max(0, Math.min(points.length - 1, i))];
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    for (let s = 0; s < 12; s++) {
      const t = s / 12;
      const along = (k: 0 | 1 | 2) =>
        0.5 *
        (2 * b[k] +
          (c[k] - a[k]) * t +
          (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k]) * t * t +
          (3 * b[k] - a[k] - 3 * c[k] + d[k]) * t * t * t);
      out.push([along(0), along(1), along(2)]);
    }
  }
  out.push(points[points.length - 1]);
  return out;
}
