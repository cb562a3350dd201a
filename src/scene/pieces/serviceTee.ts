import { pieces, taperThreads } from '../../core/catalogue/index.ts';
import { ported, type BranchRow, type RunRow } from '../shape/ported.ts';
import { femaleThread, maleThread } from '../shape/thread.ts';
import type { RZ } from '../shape/lathe.ts';
import type { PieceShape } from './part.ts';

/** Left standing proud of the body when the branch is sawn flush, and inside the band when its corners are dressed. */
const PROUD_M = 0.0006;

/**
 * Street tee, origin where the axes of run and branch meet, branch along +y.
 * Variants: `whole`, `sawn` flush with the body, `dressed` to the circle of the band.
 */
export const serviceTee: PieceShape = ({ teeSize, variant = 'whole' }) => {
  const d = pieces.serviceTee.dims(teeSize);
  const madeUp = taperThreads[teeSize].madeUpM;
  const body = d.bodyOdM / 2;
  const band = d.bandOdM / 2;
  const neck = body * 0.985;
  const port = d.portIdM / 2;
  const cavity = port + 0.0005;
  const foot = -d.axisToMaleEndM;
  const face = foot + madeUp;
  const top = d.axisToBossM;
  const threadLow = top - 0.019;
  const male = maleThread(teeSize, foot + 0.0008, face + 0.003, face);
  const female = femaleThread(teeSize, threadLow, top - 0.001, top);
  const mouth = female[female.length - 1][0] + 0.0009;
  const shoulder = Math.max(band, pieces.coupling.dims(teeSize).odM / 2 - 0.001);

  const outer: RZ[] = [
    [d.lowerBoreM / 2 + 0.001, foot],
    [male[0][0] - 0.0008, foot],
    ...male,
    [shoulder - 0.001, face + 0.003],
    [shoulder, face + 0.004],
    [shoulder, face + 0.008],
    [body, face + 0.0115],
  ];
  const crown: RZ[] = [
    [body, top - d.bandWidthM - 0.0012],
    [band, top - d.bandWidthM],
    [band, top - 0.0008],
    [band - 0.0008, top],
    [mouth, top],
    ...[...female].reverse(),
    [cavity, threadLow - 0.001],
  ];
  const floor: RZ[] = [
    [cavity, -port - 0.0004],
    [d.lowerBoreM / 2, -port - 0.001],
    [d.lowerBoreM / 2, foot + 0.001],
  ];
  const row =
    (wall: 'outer' | 'inner') =>
    (rz: RZ): RunRow => ({ rz, wall });
  const pierced = (rows: RunRow[]): RunRow[] =>
    rows.map((r, i) => (i === rows.length - 1 ? { ...r, pierced: true } : r));
  const run = [
    ...pierced(outer.map(row('outer'))),
    ...pierced(crown.map((rz, i) => row(i < 5 ? 'outer' : 'inner')(rz))),
    ...floor.map(row('inner')),
  ];
  return [
    {
      name: 'body',
      stuff: 'iron',
      cut: true,
      body: ported({
        run,
        outerBranchM: neck,
        innerBranchM: port,
        branch: branchRows(variant, {
          body,
          neck,
          band,
          port,
          top,
          bandWidth: d.bandWidthM,
          threadFrom: teeSize,
        }),
      }),
    },
  ];
};

interface BranchSizes {
  readonly body: number;
  readonly neck: number;
  readonly band: number;
  readonly port: number;
  readonly top: number;
  readonly bandWidth: number;
  readonly threadFrom: Parameters<typeof femaleThread>[0];
}

function branchRows(variant: string, s: BranchSizes): BranchRow[] {
  if (variant === 'sawn') {
    const outM = s.body + PROUD_M;
    return [
      { radiusM: s.neck, outM },
      { radiusM: s.port, outM },
    ];
  }
  if (variant === 'dressed') {
    // The sawn corners are rounded to the circle of the band.
    const circle = s.band - PROUD_M / 2;
    const outM = (x: number) => Math.min(s.body + PROUD_M, Math.sqrt(circle * circle - x * x));
    return [
      { radiusM: s.neck, outM },
      { radiusM: s.port, outM },
    ];
  }
  const thread = femaleThread(s.threadFrom, s.top - 0.016, s.top - 0.001, s.top);
  return [
    { radiusM: s.neck, outM: s.top - s.bandWidth - 0.0012 },
    { radiusM: s.band, outM: s.top - s.bandWidth },
    { radiusM: s.band, outM: s.top - 0.0008 },
    { radiusM: s.band - 0.0008, outM: s.top },
    { radiusM: thread[thread.length - 1][0] + 0.0009, outM: s.top },
    ...[...thread].reverse().map(([radiusM, outM]) => ({ radiusM, outM })),
    { radiusM: s.port, outM: s.top - 0.0168 },
  ];
}
