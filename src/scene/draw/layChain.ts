import { Vector3 } from 'three';
import { pieces } from '../../core/catalogue/index.ts';
import type { ChainView } from '../describe/view.ts';
import { EYE_BELOW_ARM_M } from '../pieces/chain.ts';

/** A place on the chain and the direction in which its own z axis lies there, upward along the leg. */
export interface Spot {
  readonly at: Vector3;
  readonly along: Vector3;
}

export interface LaidChain {
  readonly left: Spot;
  readonly right: Spot;
  readonly links: readonly Spot[];
}

const mirror = (v: Vector3) => new Vector3(v.x, -v.y, v.z);
/** A slack chain hangs off the round by this share of its slack, and never by more than this, m. */
const SAG_SHARE = 0.7;
const MOST_SAG_M = 0.03;

/** How far a tensioner has drawn its eye up, m: both its threads advance at once. */
export const drawnUpM = (turns: number): number => pieces.chain.dims().advancePerTurnM * turns;

/**
 * Where tensioners and links lie. Hooked, they run from each arm along the tangent to the round they bear on, and
 * round it below; slack between them hangs off it. Unhooked, the chain hangs from the left arm, over the side of the
 * main, and the rest of it lies on the floor. Left is away from the service (−y), right toward it.
 */
export function layChain(view: ChainView): LaidChain {
  const advance = pieces.chain.dims().advancePerTurnM;
  const slackM = Math.max(0, -(view.leftTurns + view.rightTurns) * advance);
  const sag = view.hooked ? Math.min(MOST_SAG_M, SAG_SHARE * slackM) : 0;
  const radius = view.radiusM + sag;
  const centre = view.centreZM - sag * 0.8;
  const rise = view.armZM - centre;
  const reach = Math.hypot(view.halfSpanM, rise);
  // Angle of the tangent point, measured from the downward direction at the centre.
  const toArm = Math.atan2(view.halfSpanM, -rise);
  const touch = reach > radius ? toArm - Math.acos(radius / reach) : toArm;
  const point = (a: number) => new Vector3(view.xM, radius * Math.sin(a), centre - radius * Math.cos(a));
  const arm = new Vector3(view.xM, view.halfSpanM, view.armZM);
  const leg = arm.clone().sub(point(touch));
  const legUp = leg.clone().normalize();
  const eyeOf = (turns: number) => EYE_BELOW_ARM_M - drawnUpM(turns);
  const straight = Math.max(0, leg.length() - (eyeOf(view.leftTurns) + eyeOf(view.rightTurns)) / 2);
  const half = straight + radius * touch;
  const { linkPitchM } = pieces.chain.dims();
  const count = Math.max(2, Math.round((2 * half) / linkPitchM));
  const right: Spot = { at: arm, along: legUp };
  const left: Spot = { at: mirror(arm), along: mirror(legUp) };

  if (!view.hooked) {
    const down = new Vector3(0, 0, 1);
    const eye = left.at.clone().addScaledVector(left.along, -eyeOf(0));
    const side = Array.from({ length: 12 }, (_, i) =>
      mirror(point(touch - ((touch - Math.PI / 2) * i) / 11)),
    );
    const over = touch > Math.PI / 2 ? side : [];
    const last = over[over.length - 1] ?? eye;
    const floor = new Vector3(view.xM, last.y, view.floorZM + FLAT_M);
    const lying = Array.from({ length: 14 }, (_, i) => {
      const s = (i + 1) * 0.045;
      return new Vector3(view.xM + 0.03 * Math.sin(i * 1.1), last.y - 0.02 - 0.8 * s, view.floorZM + FLAT_M);
    });
    const links = along([eye, ...over, floor, ...lying], count, linkPitchM);
    return { left, right: { at: arm, along: down }, links };
  }
  const step = (2 * half) / count;
  const links: Spot[] = [];
  for (let i = 0; i < count; i++) {
    const s = -half + step * (i + 0.5);
    const from = Math.abs(s);
    const onArc = from <= radius * touch;
    const a = onArc ? from / radius : touch;
    const at = onArc ? point(a) : point(touch).addScaledVector(legUp, from - radius * touch);
    const dir = onArc ? new Vector3(0, Math.cos(a), Math.sin(a)) : legUp.clone();
    links.push(s < 0 ? { at: mirror(at), along: mirror(dir) } : { at, along: dir });
  }
  return { left, right, links };
}

/** Links lying on the floor are this high off it. */
const FLAT_M = 0.006;

/** So many links, a pitch apart, along a line of points; what is longer than the line is left out. */
function along(line: readonly Vector3[], count: number, pitch: number): Spot[] {
  const links: Spot[] = [];
  let [piece, passed] = [0, 0];
  for (let i = 0; i < count; i++) {
    const s = pitch * (i + 0.5);
    while (piece + 1 < line.length && s > passed + line[piece].distanceTo(line[piece + 1])) {
      passed += line[piece].distanceTo(line[piece + 1]);
      piece++;
    }
    if (piece + 1 >= line.length) break;
    const [a, b] = [line[piece], line[piece + 1]];
    const direction = b.clone().sub(a).normalize();
    links.push({ at: a.clone().addScaledVector(direction, s - passed), along: direction.negate() });
  }
  return links;
}
