import {
  ballElevations,
  pieces,
  rodRange,
  stackGeometry,
  stackUp,
  taperThreads,
  type StackGeometry,
  type Standing,
} from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import type { Vec3 } from '../shape/solid.ts';

/** How the assembly stands: every elevation the picture needs, from the same catalogue the rig works with. */
export interface Stand {
  readonly geometry: StackGeometry;
  readonly pitchM: number;
  readonly madeUpTurns: number;
  /** Saddle's seat face, m; null while the saddle is off. */
  readonly seatZM: number | null;
  /** Saddle first, then the stack from below. */
  readonly standing: readonly (Standing & { readonly id: string })[];
  readonly topZM: number | null;
  readonly ballZM: number | null;
  /** Rod's lower end and the tip's, m; null without a barrel. */
  readonly rodZM: number | null;
  readonly tipZM: number | null;
  /** Lean of saddle and stack toward the side pulled harder, rad. */
  readonly tiltRad: number;
}

export function standOf(rig: RigState): Stand {
  const { mainNps, teeSize } = rig.job.workpiece;
  const geometry = stackGeometry({ mainNps, teeSize });
  const thread = taperThreads[teeSize];
  const base = { geometry, pitchM: thread.pitchM, madeUpTurns: thread.madeUpM / thread.pitchM };
  if (rig.saddle.on === 'board') {
    return {
      ...base,
      seatZM: null,
      standing: [],
      topZM: null,
      ballZM: null,
      rodZM: null,
      tipZM: null,
      tiltRad: 0,
    };
  }
  const seatZM = rig.saddle.on === 'tee' ? geometry.firstSeatZM : geometry.secondSeatZM;
  const ids = [rig.saddle.piece ?? 'saddle', ...rig.stack.map((p) => p.id)];
  const standing = stackUp(seatZM, ['saddle', ...rig.stack.map((p) => p.kind)]).map((s, i) => ({
    ...s,
    id: ids[i],
  }));
  const valve = standing.find((s) => s.kind === 'isolationValve');
  const barrel = standing.find((s) => s.kind === 'rodBarrel');
  const rodZM = barrel ? rodRange(barrel.seatZM).upZM - rig.rod.travelM : null;
  return {
    ...base,
    seatZM,
    standing,
    topZM: standing[standing.length - 1].topZM,
    ballZM: valve ? ballElevations(valve.seatZM).centreZM : null,
    rodZM,
    tipZM: rodZM === null ? null : rodZM - tipLengthM(rig),
    tiltRad: tiltOf(rig),
  };
}

function tipLengthM(rig: RigState): number {
  const kind = rig.rod.tip === null ? null : rig.kit[rig.rod.tip].kind;
  if (kind === 'socket') return pieces.socket.dims(rig.job.workpiece.teeSize).lengthM;
  if (kind === 'stopperHolder') return pieces.stopperHolder.dims().lengthM;
  return kind === 'magnet' ? pieces.magnet.dims().lengthM : 0;
}

/** Turns that differ from left to right lean the saddle; left is away from the service, right toward it. */
function tiltOf(rig: RigState): number {
  const hooked = rig.chains.filter((c) => c.hooked);
  if (hooked.length === 0) return 0;
  const differ = hooked.reduce((sum, c) => sum + c.right - c.left, 0) / hooked.length;
  const rise = differ * pieces.chain.dims().advancePerTurnM;
  const lean = rise / (2 * pieces.saddle.dims().legHalfSpanM);
  return Math.max(-MOST_LEAN_RAD, Math.min(MOST_LEAN_RAD, lean));
}

/** Metal meets metal at about this lean. */
const MOST_LEAN_RAD = 0.035;

/** A point of the stack, leaning with it about the seat. */
export function leaned(stand: Stand, x: number, y: number, z: number): Vec3 {
  if (stand.seatZM === null || stand.tiltRad === 0) return [x, y, z];
  const [c, s] = [Math.cos(stand.tiltRad), Math.sin(stand.tiltRad)];
  const up = z - stand.seatZM;
  return [x, c * y + s * up, stand.seatZM - s * y + c * up];
}
