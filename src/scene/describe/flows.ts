import { pieces, rigJoint } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { cutAtM, SAW_GAP_M } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import { hosePath, outletAt } from './cables.ts';
import { leaned, type Stand } from './stand.ts';
import type { FlowView, LinkGas } from './view.ts';

interface Way {
  readonly path: readonly Vec3[];
  readonly spreadM: number;
}

/** Streams along the links through which something flows; a link without flow gives none. */
export function flowViews(rig: RigState, stand: Stand, links: readonly LinkGas[]): FlowView[] {
  return links.flatMap((link) => {
    if (link.kgPerS === 0) return [];
    const way = wayOf(rig, stand, link.id);
    if (way === null) return [];
    const path = link.kgPerS > 0 ? way.path : [...way.path].reverse();
    return [
      {
        link: link.id,
        path,
        kgPerS: Math.abs(link.kgPerS),
        gasFraction: link.gasFraction,
        spreadM: way.spreadM,
      },
    ];
  });
}

/** The path a link's gas takes, from its `from` to its `to`; null for what happens out of the picture. */
function wayOf(rig: RigState, stand: Stand, link: string): Way | null {
  const { teeSize } = rig.job.workpiece;
  const { geometry: g } = stand;
  const tee = pieces.serviceTee.dims(teeSize);
  const lift = rig.tee.turnsBack * stand.pitchM;
  const axis = g.portAxisZM + lift;
  const cut = cutAtM(tee.axisToBossM);
  const bore = tee.lowerBoreM / 2;
  const thread = tee.maleOdM / 2;
  switch (link) {
    case 'bore':
      return {
        path: [
          [0, 0, -g.mainRadiusM],
          [0, 0, g.teeMaleEndZM],
          [0, 0, axis],
        ],
        spreadM: bore * 0.8,
      };
    case 'teeThread':
      return aside(thread, g.teeMaleEndZM + lift, g.couplingTopZM + lift);
    case 'plug':
      return rig.plug.at === 'tee'
        ? aside(thread, g.bossZM + lift - 0.017, g.bossZM + lift)
        : {
            path: [
              [0, 0, axis],
              [0, 0, g.bossZM],
              [0, 0, g.bossZM + 0.35],
            ],
            spreadM: tee.portIdM * 0.4,
          };
    case 'keeper':
      return aside(thread, g.bossZM + lift - 0.017, g.bossZM + lift);
    case 'port':
      return {
        path: [
          [0, 0, axis],
          [0, tee.axisToBossM, axis],
          [0, 0.5, axis],
        ],
        spreadM: bore * 0.7,
      };
    case 'stub':
      return {
        path: [
          [0, 0, axis],
          [0, cut + 0.03, axis],
        ],
        spreadM: bore * 0.8,
      };
    case 'pilot':
      return {
        path: [
          [0, cut, axis],
          [0, cut, axis + 0.02],
          [0, cut, axis + 0.16],
        ],
        spreadM: 0.004,
      };
    case 'serviceEnd':
      return { path: [[0, 0.5, g.portAxisZM], [0, cut + SAW_GAP_M, g.portAxisZM], [0, cut - 0.09, g.portAxisZM]], spreadM: bore * 0.7 }; // prettier-ignore
    case 'closing':
      return rig.closing.at === 'coupling'
        ? aside(thread, g.couplingTopZM - 0.017, g.couplingTopZM)
        : {
            path: [
              [0, 0, -g.mainRadiusM],
              [0, 0, g.couplingTopZM],
              [0, 0, g.couplingTopZM + 0.2],
            ],
            spreadM: bore,
          };
    default:
      return stackWay(rig, stand, link);
  }
}

/** Up beside a thread and out over its face, on the side away from the service. */
const aside = (r: number, low: number, high: number): Way => ({
  path: [
    [0, -r, low],
    [0, -r, high],
    [0, -r - 0.02, high + 0.012],
  ],
  spreadM: 0.002,
});

function stackWay(rig: RigState, stand: Stand, link: string): Way | null {
  if (stand.seatZM === null || stand.topZM === null) return null;
  const at = (y: number, z: number): Vec3 => leaned(stand, 0, y, z);
  const r = rigJoint.boreM / 2;
  const last = stand.standing[stand.standing.length - 1];
  const jointAt = (z: number): Way => ({
    path: [at(-r, z), at(-0.046, z), at(-0.05, z - 0.022), at(-0.085, z - 0.03)],
    spreadM: 0.002,
  });
  if (link.startsWith('joint:')) {
    const kind = link.slice('joint:'.length);
    const piece = kind === 'top' ? last : stand.standing.find((s) => s.kind === kind);
    return piece ? jointAt(piece.seatZM) : null;
  }
  switch (link) {
    case 'seat':
      return { path: [at(-0.02, stand.seatZM - 0.005), at(-0.055, stand.seatZM - 0.011), at(-0.1, stand.seatZM - 0.014)], spreadM: 0.003 }; // prettier-ignore
    case 'open':
      return {
        path: [at(0, stand.topZM - 0.05), at(0, stand.topZM), at(0, stand.topZM + 0.4)],
        spreadM: r * 0.8,
      };
    case 'ball': {
      const z = stand.ballZM ?? stand.topZM;
      return { path: [at(0, z - 0.1), at(0, z), at(0, z + 0.1)], spreadM: r * 0.7 };
    }
    case 'gland': {
      const top = last.topZM + pieces.rodBarrel.dims().glandHeightM;
      return { path: [at(-0.011, top - 0.04), at(-0.011, top), at(-0.02, top + 0.05)], spreadM: 0.003 };
    }
    case 'bleed': {
      const hose = hosePath(rig, stand);
      const outlet = outletAt(stand);
      if (outlet === null) return null;
      const inside = leaned(stand, 0, 0, outlet.zM);
      const end: Vec3 = leaned(stand, 0, outlet.yM + 0.2, outlet.zM);
      const out: Vec3 = leaned(stand, 0, outlet.yM, outlet.zM);
      return { path: hose ? [inside, ...hose] : [inside, out, end], spreadM: 0.004 };
    }
    case 'relief':
      return {
        path: [at(0.03, last.topZM), at(0.03, last.topZM + 0.06), at(0.03, last.topZM + 0.25)],
        spreadM: 0.004,
      };
    case 'pumpCheck':
      return {
        path: [at(-0.03, last.topZM), at(-0.03, last.topZM + 0.03), at(-0.06, last.topZM + 0.1)],
        spreadM: 0.003,
      };
    case 'pump':
      return { path: [at(-0.16, last.topZM + 0.026), at(-0.03, last.topZM + 0.026), at(-0.03, last.seatZM)], spreadM: 0.003 }; // prettier-ignore
    default:
      return null;
  }
}
