import { pieces, taperThreads } from '../../core/catalogue/index.ts';
import { ported, type RunRow } from '../shape/ported.ts';
import { femaleThread, maleThread } from '../shape/thread.ts';
import type { RZ } from '../shape/lathe.ts';
import type { PieceShape } from './part.ts';

/** Left between the body's own round and the face its branch is bored in, m. */
const FACE_M = 0.0006;

/** Round-bodied tee, origin where the axes of run and branch meet, branch along +y, bored flush in the body. */
export const renewalTee: PieceShape = ({ teeSize }) => {
  const d = pieces.renewalTee.dims(teeSize);
  const bore = pieces.serviceTee.dims(teeSize).lowerBoreM / 2;
  const body = d.bodyOdM / 2;
  const port = d.portIdM / 2;
  const cavity = port + 0.0005;
  const foot = -d.axisToMaleEndM;
  const face = foot + taperThreads[teeSize].madeUpM;
  const top = d.axisToBossM;
  const threadLow = top - 0.019;
  const male = maleThread(teeSize, foot + 0.0008, face + 0.003, face);
  const female = femaleThread(teeSize, threadLow, top - 0.001, top);
  const mouth = female[female.length - 1][0] + 0.0009;
  const outer: RZ[] = [
    [bore + 0.001, foot],
    [male[0][0] - 0.0008, foot],
    ...male,
    [body - 0.001, face + 0.003],
    [body, face + 0.004],
  ];
  const crown: RZ[] = [
    [body, top - 0.0012],
    [body - 0.0012, top],
    [mouth, top],
    ...[...female].reverse(),
    [cavity, threadLow - 0.001],
  ];
  const floor: RZ[] = [
    [cavity, -port - 0.0004],
    [bore, -port - 0.001],
    [bore, foot + 0.001],
  ];
  const run: RunRow[] = [
    ...outer.map((rz, i): RunRow => ({ rz, wall: 'outer', pierced: i === outer.length - 1 })),
    ...crown.map((rz, i): RunRow => ({
      rz,
      wall: i < 3 ? 'outer' : 'inner',
      pierced: i === crown.length - 1,
    })),
    ...floor.map((rz): RunRow => ({ rz, wall: 'inner' })),
  ];
  const neck = port + 0.004;
  const outM = (x: number): number => Math.sqrt((body + FACE_M) * (body + FACE_M) - x * x);
  return [
    {
      name: 'body',
      stuff: 'bright',
      cut: true,
      body: ported({
        run,
        outerBranchM: neck,
        innerBranchM: port,
        branch: [
          { radiusM: neck, outM },
          { radiusM: port, outM },
        ],
      }),
    },
  ];
};
