import { pieces, squarePlugs } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { cutAtM } from '../pieces/serviceLine.ts';
import type { Vec3 } from '../shape/solid.ts';
import type { Stand } from './stand.ts';
import { toolDetails } from './tools.ts';
import type { DetailView, FluidView, Shown } from './view.ts';
import { teePlace } from './workpiece.ts';

/** Paint stands this far off what it is on; a stroke is so wide and so long, m. */
const PAINT_M = 0.0004;
const STROKE_M = 0.004;
/** Strokes are put just behind the section, on the side away from the service, where both views show them. */
const MARK_RAD = -Math.PI / 2 - 0.22;
/** Coating of the main: how thick, and how far to each side of the coupling it is taken off, m (assumed). */
const COATING_M = 0.003;
const BARED_M = 0.26;

/** Everything seen that is no piece of the catalogue. */
export function detailViews(
  rig: RigState,
  stand: Stand,
  shown: Shown,
  fluid: readonly FluidView[],
): DetailView[] {
  return [
    ...coating(rig, stand),
    ...paint(rig, stand),
    ...pilot(rig, stand),
    ...scale(rig, stand),
    ...wet(fluid),
    ...toolDetails(rig, stand, shown.doing),
  ];
}

/** Old coating on the main, taken off where the chains bear, made good again at the end. */
function coating(rig: RigState, { geometry: g }: Stand): DetailView[] {
  const { teeSize, mainNps } = rig.job.workpiece;
  const half = pieces.main.dims(mainNps).lengthM / 2 - 0.001;
  const { odM, weldLegM } = pieces.coupling.dims(teeSize);
  const foot = odM / 2 + weldLegM + 0.012;
  const made = rig.site.done.coat !== undefined;
  const bared = rig.site.cleaned.pipe && !made;
  const near = bared ? BARED_M : made ? odM / 2 : foot;
  const sleeve = (id: string, fromM: number, toM: number): DetailView => ({
    id,
    stuff: 'coating',
    cut: true,
    position: [0, 0, -g.mainRadiusM],
    turns: 0,
    form: { shape: 'sleeve', innerM: g.mainRadiusM + 0.0002, outerM: g.mainRadiusM + COATING_M, fromM, toM },
  });
  const sleeves = [sleeve('coating-a', -half, -near), sleeve('coating-b', near, half)];
  if (!made) return sleeves;
  const over: DetailView = {
    id: 'coating-plug',
    stuff: 'coating',
    cut: true,
    position: [0, 0, 0],
    turns: 0,
    form: {
      shape: 'mound',
      radiusM: odM / 2,
      heightM: g.closingShoulderZM + squarePlugs[teeSize].squareHeightM + 0.002,
      thickM: COATING_M,
    },
  };
  return [...sleeves, over];
}

function paint(rig: RigState, stand: Stand): DetailView[] {
  const { geometry: g } = stand;
  const { teeSize } = rig.job.workpiece;
  const tee = teePlace(rig, stand);
  if (tee === null) return [];
  const dims = pieces.serviceTee.dims(teeSize);
  const thread = dims.maleOdM / 2;
  const { plug, keeper, tee: bitten, portLine } = rig.site.marks;
  const at = (above: number): Vec3 => [0, 0, tee.axisZM + above];
  const stroke = (id: string, position: Vec3, turns: number, innerM: number, outerM: number, tall = PAINT_M): DetailView => ({
    id,
    stuff: 'marker',
    cut: true,
    position,
    turns,
    form: { shape: 'arc', innerM, outerM, lowM: 0.00002, highM: tall, midRad: MARK_RAD, spanRad: STROKE_M / outerM },
  }); // prettier-ignore
  const views: DetailView[] = [];
  const shoulder = g.plugShoulderZM - g.portAxisZM;
  if (plug !== undefined && rig.plug.at === 'tee') {
    const rise = rig.plug.turnsBack * stand.pitchM;
    const turned = tee.turns - (rig.plug.turnsBack - plug);
    views.push(stroke('mark-plug', at(shoulder + rise), turned, thread * 0.62, thread * 0.94));
  }
  if (keeper !== undefined && rig.keeper.at === 'tee') {
    const rise = (stand.madeUpTurns - rig.keeper.engagedTurns) * stand.pitchM;
    const turned = tee.turns + (rig.keeper.engagedTurns - keeper);
    views.push(stroke('mark-keeper', at(shoulder + rise), turned, thread * 0.62, thread * 0.94));
  }
  if (plug !== undefined || keeper !== undefined) {
    views.push(
      stroke('mark-boss', at(dims.axisToBossM), tee.turns, thread + 0.0012, dims.bandOdM / 2 - 0.001),
    );
  }
  if (bitten !== undefined && rig.tee.at === 'coupling') {
    const r = pieces.coupling.dims(teeSize).odM / 2;
    const hub = Math.max(dims.bandOdM / 2, r - 0.001);
    const back = -(rig.tee.turnsBack - bitten);
    const lift = rig.tee.turnsBack * stand.pitchM;
    views.push(stroke('mark-hub', [0, 0, g.couplingTopZM + 0.004 + lift], back, hub, hub + PAINT_M, 0.004));
    views.push(stroke('mark-coupling', [0, 0, g.couplingTopZM - 0.014], 0, r, r + PAINT_M, 0.012));
  }
  if (portLine !== undefined) {
    const wide = stroke('mark-port', at(-dims.portIdM / 2), tee.turns, dims.bodyOdM / 2, dims.bodyOdM / 2 + PAINT_M, 0.001); // prettier-ignore
    views.push({ ...wide, form: { ...wide.form, spanRad: 0.9 } as DetailView['form'] });
  }
  return views;
}

/** The plug driven into the pilot opening. */
function pilot(rig: RigState, { geometry: g }: Stand): DetailView[] {
  if (rig.branch.cut !== 'pilot' || !rig.branch.pilotPlugged) return [];
  const y = cutAtM(pieces.serviceTee.dims(rig.job.workpiece.teeSize).axisToBossM);
  const top = g.portAxisZM + pieces.serviceLine.dims(rig.job.system.service.nps).odM / 2;
  return [
    {
      id: 'pilotPlug',
      stuff: 'wood',
      cut: false,
      position: [0, y, top + 0.004],
      turns: 0,
      form: { shape: 'peg', radiusM: 0.0022, lengthM: 0.016 },
    },
  ];
}

/** Loose scale in the lower bore, until it is cleaned out. */
function scale(rig: RigState, stand: Stand): DetailView[] {
  const { boreScale, teeSize } = rig.job.workpiece;
  if (!boreScale || rig.site.cleaned.bore || rig.tee.at !== 'coupling') return [];
  const { lowerBoreM } = pieces.serviceTee.dims(teeSize);
  const position: Vec3 = [0, 0, stand.geometry.portUndersideZM - 0.03];
  return [
    { id: 'scale', stuff: 'scale', cut: false, position, turns: 0, form: { shape: 'lumps', radiusM: lowerBoreM / 2 } },
  ]; // prettier-ignore
}

/** Fluid brushed on a joint glistens whether it bubbles or not. */
const wet = (fluid: readonly FluidView[]): DetailView[] =>
  fluid.map(({ at, centre, radiusM }) => ({
    id: `wet-${at}`,
    stuff: 'glass' as const,
    cut: true,
    position: centre,
    turns: 0,
    form: { shape: 'cord' as const, radiusM, wireM: 0.0013 },
  }));

/** The ring being tried over the tee: it goes down to the body, or stops on the branch that is still too long. */
export function gaugeRingAt(rig: RigState, stand: Stand): Vec3 | null {
  const tee = teePlace(rig, stand);
  if (tee === null) return null;
  const { bandOdM } = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  const passes = rig.tee.sweptM <= pieces.gaugeRing.dims().idM;
  return [0, 0, tee.axisZM + (passes ? -pieces.gaugeRing.dims().heightM / 2 : bandOdM / 2 + 0.0005)];
}
