import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring, type RZ } from '../shape/lathe.ts';
import { ported, type RunRow } from '../shape/ported.ts';
import { alongX, alongY, join, moved, turned, upsideDown } from '../shape/solid.ts';
import { box } from '../shape/prism.ts';
import { HAIR, oRing, skirtBelow, spigotAbove, type Joint, type PieceShape } from './part.ts';

/** The stem points to −y, away from the service. */
const STEM_R = 0.011;
const NECK_R = 0.02;
const NECK_OUT_M = 0.092;
const CAVITY_HALF_M = 0.03;

/**
 * Full-port ball valve, origin on its seat. The handle lies along the bore (pointing up) when open; `valveRad` is the
 * angle open, so it lies across when shut.
 */
export const isolationValve: PieceShape = () => {
  const d = pieces.isolationValve.dims();
  const bore = d.boreM / 2;
  const ball = d.ballRadiusM;
  const c = d.ballCentreM;
  const outer = d.bodyOdM / 2;
  const at = ([r, z]: RZ): RZ => [r, z - c];
  const cavity = ball + 0.0012;
  const seat = Math.sqrt(ball * ball - 0.041 * 0.041);
  const rows: RunRow[] = [
    ...[...skirtBelow(0.05)].slice(1).map((rz) => ({ rz: at(rz), wall: 'outer' as const })),
    { rz: [0.05, -0.054], wall: 'outer' },
    { rz: [outer, -0.036], wall: 'outer', pierced: true },
    { rz: [outer, 0.036], wall: 'outer' },
    { rz: [0.05, 0.054], wall: 'outer' },
    ...spigotAbove(d.heightM, 0.05).map((rz) => ({ rz: at(rz), wall: 'outer' as const })),
    { rz: [bore, seat + 0.006], wall: 'inner' },
    { rz: [0.047, seat + 0.006], wall: 'inner' },
    { rz: [cavity, CAVITY_HALF_M - 0.004], wall: 'inner', pierced: true },
    { rz: [cavity, -CAVITY_HALF_M + 0.004], wall: 'inner' },
    { rz: [0.047, -seat - 0.006], wall: 'inner' },
    { rz: [bore, -seat - 0.006], wall: 'inner' },
    { rz: [bore, -c], wall: 'inner' },
  ];
  const shell = ported({
    run: rows,
    outerBranchM: NECK_R,
    innerBranchM: STEM_R + HAIR,
    branch: [
      { radiusM: NECK_R, outM: NECK_OUT_M - 0.001 },
      { radiusM: NECK_R - 0.001, outM: NECK_OUT_M },
      { radiusM: STEM_R + HAIR, outM: NECK_OUT_M },
    ],
    restFacets: 30,
  });
  const turnAbout: Joint = { by: 'valveRad', axis: [0, 1, 0], at: [0, 0, c], perUnit: 1 };
  const ballArc = (from: number, to: number, steps: number): RZ[] =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const a = from + ((to - from) * i) / steps;
      return [ball * Math.cos(a), ball * Math.sin(a)] as const;
    });
  const rim = Math.asin(d.ballBoreLengthM / 2 / ball);
  // Made with its bore across (along x): that is how it lies when shut, at angle zero.
  const ballBody = alongX(lathe(ballArc(-rim, rim, 14)));
  const seats = (up: 1 | -1) => {
    const half = ring(bore, 0.0468, seat - 0.0012, seat + 0.006 - HAIR);
    return moved(up === 1 ? half : upsideDown(half), [0, 0, c]);
  };
  const stem = alongY(ring(0, STEM_R, -NECK_OUT_M - 0.014, -cavity + 0.002, 20));
  const lever = box(-0.011, 0.011, -NECK_OUT_M - 0.024, -NECK_OUT_M - 0.0145, -0.018, d.handleLengthM * 0.55);
  const grip = box(
    -0.015,
    0.015,
    -NECK_OUT_M - 0.03,
    -NECK_OUT_M - 0.0085,
    d.handleLengthM * 0.55 + HAIR,
    d.handleLengthM,
  );
  const handle = join(lever, grip);
  // Open is a quarter turn from shut: the lever, made upright, is laid over by that much.
  const laid = alongYTurn(handle, -Math.PI / 2);
  return [
    { name: 'body', stuff: 'steel', cut: true, body: moved(turned(shell, Math.PI), [0, 0, c]) },
    oRing(),
    { name: 'seats', stuff: 'seal', cut: true, body: join(seats(1), seats(-1)) },
    { name: 'ball', stuff: 'bright', cut: true, body: moved(ballBody, [0, 0, c]), joint: turnAbout },
    { name: 'stem', stuff: 'bright', cut: false, body: moved(stem, [0, 0, c]), joint: turnAbout },
    { name: 'handle', stuff: 'paint', cut: false, body: moved(laid, [0, 0, c]), joint: turnAbout },
  ];
};

/** Turn about the y axis, rad. */
function alongYTurn(solid: Parameters<typeof moved>[0], angleRad: number) {
  const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
  const points: number[] = [];
  for (let i = 0; i < solid.points.length; i += 3) {
    const [x, y, z] = [solid.points[i], solid.points[i + 1], solid.points[i + 2]];
    points.push(c * x + s * z, y, -s * x + c * z);
  }
  return { points, corners: solid.corners };
}
