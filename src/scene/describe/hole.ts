import { pieces } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import type { Stand } from './stand.ts';
import type { HoleView } from './view.ts';

/** Soil stands off the coating of a pipe by this much, m. */
const OFF_PIPE_M = 0.0035;

/** Floor of the hole: a hand's width and a half below the main (assumed). */
export const holeFloorZM = (rig: RigState): number => -pieces.main.dims(rig.job.workpiece.mainNps).odM - 0.22;

export function holeView(rig: RigState, stand: Stand): HoleView {
  const { mainRadiusM, portAxisZM } = stand.geometry;
  const service = pieces.serviceLine.dims(rig.job.system.service.nps);
  return {
    depthM: rig.job.site.holeDepthM,
    floorZM: holeFloorZM(rig),
    main: { radiusM: mainRadiusM + OFF_PIPE_M, zM: -mainRadiusM },
    service: { radiusM: service.odM / 2 + OFF_PIPE_M, zM: portAxisZM },
    ladder: rig.site.done.ladder !== undefined,
    shoring: rig.site.done.shoring !== undefined,
  };
}
