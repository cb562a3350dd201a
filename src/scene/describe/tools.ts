import { pieces } from '../../core/catalogue/index.ts';
import type { Action, RigState } from '../../core/rig/index.ts';
import { cutAtM, SAW_GAP_M } from '../pieces/serviceLine.ts';
import type { DetailShape } from '../shape/detail.ts';
import type { Vec3 } from '../shape/solid.ts';
import type { Stand } from './stand.ts';
import type { DetailView } from './view.ts';
import { teePlace } from './workpiece.ts';

/** Lengths of the wrenches, m (assumed). */
const WRENCH_M = 0.3;

/** The tools the hands used last, where they used them. */
export function toolDetails(rig: RigState, stand: Stand, action: Action | null): DetailView[] {
  if (action === null) return [];
  const { geometry: g } = stand;
  const { teeSize } = rig.job.workpiece;
  const tee = teePlace(rig, stand);
  const dims = pieces.serviceTee.dims(teeSize);
  const square = pieces.topPlug.dims(teeSize).acrossFlatsM;
  const head = g.plugShoulderZM + pieces.topPlug.dims(teeSize).squareHeightM * 0.5;
  const onHead = (turns: number) => [tool('wrench', [0, 0, head], turns, wrench(square))];
  const holding = (on: boolean) =>
    on ? [tool('holdBack', [0, 0, g.hubUndersideZM - 0.004], 0.31, wrench(dims.bodyOdM))] : [];
  switch (action.kind) {
    case 'plug.turn':
      return rig.plug.at === 'tee' ? [...onHead(0.04 - rig.plug.turnsBack), ...holding(action.holdBack)] : [];
    case 'keeper.pull':
      return rig.keeper.at === 'tee' && tee ? [...onHead(0.04), ...holding(action.holdBack)] : [];
    case 'tee.turn':
      return tee && rig.tee.at === 'coupling'
        ? [tool('wrench', [0, 0, tee.axisZM - dims.bandOdM / 2 - 0.004], 0.31 - rig.tee.turnsBack, wrench(dims.bodyOdM))] // prettier-ignore
        : [];
    case 'chain.tap': {
      const { chainHalfSpanM } = pieces.saddle.dims();
      const x = action.chain === 0 ? chainHalfSpanM : -chainHalfSpanM;
      const out = g.mainRadiusM + 0.045;
      return stand.seatZM === null
        ? []
        : [tool('hammer', [x, -out, -g.mainRadiusM], 0.25, { shape: 'hammer' })];
    }
    case 'branch.cut':
    case 'tee.trim':
      return sawing(rig, stand, action);
    default:
      return [];
  }
}

const wrench = (acrossM: number): DetailShape => ({ shape: 'wrench', acrossM, lengthM: WRENCH_M });

const tool = (id: string, position: Vec3, turns: number, form: DetailShape): DetailView => ({
  id,
  stuff: 'tool',
  cut: false,
  position,
  turns,
  form,
});

function sawing(rig: RigState, { geometry: g }: Stand, action: Action): DetailView[] {
  const dims = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  const through = action.kind === 'branch.cut' && action.part === 'through';
  const flush = action.kind === 'tee.trim' && action.how === 'saw';
  if (!through && !flush) return [];
  const y = through ? cutAtM(dims.axisToBossM) + SAW_GAP_M / 2 : dims.bodyOdM / 2 + 0.003;
  const low = g.portAxisZM - pieces.serviceLine.dims(rig.job.system.service.nps).odM / 2;
  return [tool('saw', [0, y, low], 0, { shape: 'saw' })];
}
