import { pieces } from '../core/catalogue/index.ts';
import type { RigState } from '../core/rig/index.ts';
import { cableViews } from './describe/cables.ts';
import { chainViews } from './describe/chains.ts';
import { detailViews } from './describe/details.ts';
import { flowViews } from './describe/flows.ts';
import { fluidViews } from './describe/fluid.ts';
import { holeView } from './describe/hole.ts';
import { gasBodies } from './describe/gasBodies.ts';
import { kitItems } from './describe/kit.ts';
import { sizeViews } from './describe/sizes.ts';
import { standOf } from './describe/stand.ts';
import { nothingShown, type SceneView, type Shown } from './describe/view.ts';
import { workView } from './describe/work.ts';
import { workpieceItems } from './describe/workpiece.ts';
import { GAUGE_STEM_M } from './pieces/testHead.ts';
import type { ShapeSpec } from './pieces/part.ts';

/** The test head's gauge stands this far above it, m. */
const GAUGE_ABOVE_M = GAUGE_STEM_M + pieces.testHead.dims().gaugeDialOdM;

/**
 * The picture in plain words and numbers: where every piece is, how it is turned, squeezed and opened. A pure function
 * of the rig's state and of what may be shown; nothing is remembered from one call to the next.
 */
export function describe(rig: RigState, shown: Shown = nothingShown): SceneView {
  const { mainNps, teeSize } = rig.job.workpiece;
  const spec: ShapeSpec = { mainNps, teeSize };
  const stand = standOf(rig);
  const fluid = fluidViews(rig, stand, shown);
  const gaugeM = rig.stack.some((p) => p.kind === 'testHead') ? GAUGE_ABOVE_M : 0;
  const topZM = (stand.topZM ?? stand.geometry.plugTopZM) + gaugeM;
  return {
    items: [...workpieceItems(rig, stand, spec), ...kitItems(rig, stand, spec, shown)],
    chains: chainViews(rig, stand),
    cables: cableViews(rig, stand),
    gas: shown.gas ? gasBodies(rig, stand, shown.gas.cells) : [],
    flows: shown.gas ? flowViews(rig, stand, shown.gas.links) : [],
    fluid,
    details: detailViews(rig, stand, shown, fluid),
    hole: holeView(rig, stand),
    marks: {
      topZM,
      highestZM: stand.rodZM === null ? topZM : stand.rodZM + pieces.rod.dims().lengthM + 0.06,
      bossZM: stand.geometry.bossZM,
      ballZM: stand.ballZM,
      boreFloorZM: stand.geometry.couplingTopZM,
    },
    sizes: sizeViews(rig, stand),
    work: workView(rig, stand, shown.lookAt ?? shown.doing),
  };
}
