import { cradleSizes, pieces } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { ARM_UNDERSIDE_M } from '../pieces/saddle.ts';
import { holeFloorZM } from './hole.ts';
import type { Stand } from './stand.ts';
import type { ChainView } from './view.ts';

/** The chains hung on the saddle; the first on the near side of the section, the second behind it. */
export function chainViews(rig: RigState, stand: Stand): ChainView[] {
  if (stand.seatZM === null) return [];
  const saddle = pieces.saddle.dims();
  const { linkWidthM } = pieces.chain.dims();
  const mainR = stand.geometry.mainRadiusM;
  const nps = rig.job.workpiece.mainNps;
  const views: ChainView[] = [];
  rig.chains.forEach((chain, index) => {
    if (chain.piece === null) return;
    const cradled = rig.saddle.cradles.length > index && cradleSizes.includes(nps);
    const bearing = cradled ? pieces.cradleBlock.dims(nps).chainRadiusM : mainR;
    views.push({
      id: chain.piece,
      index,
      xM: index === 0 ? saddle.chainHalfSpanM : -saddle.chainHalfSpanM,
      hooked: chain.hooked,
      floorZM: holeFloorZM(rig),
      radiusM: bearing + linkWidthM * 0.36,
      centreZM: -mainR,
      armZM: (stand.seatZM ?? 0) + ARM_UNDERSIDE_M,
      halfSpanM: saddle.legHalfSpanM,
      leftTurns: chain.left,
      rightTurns: chain.right,
    });
  });
  return views;
}
