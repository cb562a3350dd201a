import { constants, pieces, taperThreads, type TeeSize } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { maleThread } from '../shape/thread.ts';
import { ported, type RunRow } from '../shape/ported.ts';
import { alongY, moved, turned } from '../shape/solid.ts';
import type { Part, PieceShape } from './part.ts';

/** Where the saw goes through, m out from the axis of the run: far enough that what is left clears the saddle. */
export const cutAtM = (axisToFaceM: number): number => axisToFaceM + 0.04;

/** Width the saw and the springing pipe leave open. */
export const SAW_GAP_M = 0.004;

/**
 * Service pipe along +y, origin where the tee's axes meet.
 * Variants: `whole`, `pilot` (a small hole drilled where the cut will be), `stub` (what stays in the tee after the cut), `cut` (what stays in the ground).
 */
export const serviceLine: PieceShape = ({ teeSize, variant = 'whole' }) => {
  const d = pieces.serviceLine.dims(teeSize);
  const face = pieces.serviceTee.dims(teeSize).axisToBossM;
  const cut = cutAtM(face);
  const [outer, inner] = [d.odM / 2, d.idM / 2];
  if (variant === 'cut') {
    const body = alongY(ring(inner, outer, cut + SAW_GAP_M, d.shownLengthM));
    return [{ name: 'pipe', stuff: 'steel', cut: true, body }];
  }
  if (variant === 'pilot') return [pierced(teeSize)];
  const start = face - taperThreads[teeSize].madeUpM;
  const end = variant === 'stub' ? cut : d.shownLengthM;
  // The thread's cone widens outward from the end that is screwed in.
  const thread = maleThread(teeSize, start + 0.0008, face + 0.001, face);
  const body = lathe([
    [inner, start],
    [thread[0][0] - 0.0006, start],
    ...thread,
    [outer, face + 0.003],
    [outer, end],
    [inner, end],
  ]);
  return [{ name: 'pipe', stuff: 'steel', cut: true, body: alongY(body) }];
};

/** The whole pipe with the pilot hole through its top. */
function pierced(teeSize: TeeSize): Part {
  const d = pieces.serviceLine.dims(teeSize);
  const face = pieces.serviceTee.dims(teeSize).axisToBossM;
  const cut = cutAtM(face);
  const hole = constants.pilotHoleDiameterM.value / 2;
  const [outer, inner] = [d.odM / 2, d.idM / 2];
  const start = face - taperThreads[teeSize].madeUpM;
  const thread = maleThread(teeSize, start + 0.0008, face + 0.001, face);
  const row = (r: number, z: number, wall: RunRow['wall'], open = false): RunRow => ({
    rz: [r, z - cut],
    wall,
    pierced: open,
  });
  const run = [
    row(inner, start, 'outer'),
    row(thread[0][0] - 0.0006, start, 'outer'),
    ...thread.map(([r, z]) => row(r, z, 'outer')),
    row(outer, face + 0.003, 'outer', true),
    row(outer, d.shownLengthM, 'outer'),
    row(inner, d.shownLengthM, 'inner', true),
  ];
  const body = ported({
    run,
    outerBranchM: hole,
    innerBranchM: hole,
    branch: [],
    branchFacets: 16,
    restFacets: 36,
  });
  // The branch of the run points along +y; laid along the service it must point up.
  return {
    name: 'pipe',
    stuff: 'steel',
    cut: true,
    body: alongY(moved(turned(body, -Math.PI / 2), [0, 0, cut])),
  };
}
