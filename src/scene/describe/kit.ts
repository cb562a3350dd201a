import { constants, pieces, type PieceKind } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import type { ShapeSpec } from '../pieces/part.ts';
import { DIAL_SWEEP_RAD } from '../pieces/testHead.ts';
import { gaugeRingAt } from './details.ts';
import { leaned, type Stand } from './stand.ts';
import type { ItemView, Shown } from './view.ts';
import { rodTurns, sized, stopperZM } from './workpiece.ts';

const still = { turns: 0, tiltRad: 0, joints: {} } as const;
/** Full scale of the head's gauge, Pa: 100 psi (assumed). */
const GAUGE_RANGE_PA = 689475.7;
/** Turns past snug at which the metal stop is met (assumed), and bolt turns that squeeze the gasket home. */
const STOP_TURNS = 0.47;
const BOLT_TURNS = 2;
/** Squeeze turns at which the stopper's rubber fills its bore and stands firm (assumed). */
const FIRM_TURNS = 3.6;

const inUnit = (x: number): number => Math.max(0, Math.min(1, x));
/** Rubber is redrawn in eighths: finer cannot be seen and would rebuild its shape at every turn. */
const inEighths = (x: number): number => Math.round(inUnit(x) * 8) / 8;

/** Everything from the kit that stands on the rig or hangs on the rod, chains apart. */
export function kitItems(rig: RigState, stand: Stand, spec: ShapeSpec, shown: Shown): ItemView[] {
  return [
    ...seatItems(rig, stand, spec),
    ...standingItems(rig, stand, spec, shown),
    ...rodItems(rig, stand, spec),
    ...stopperItems(rig, stand, spec),
    ...triedItems(rig, stand, spec, shown),
  ];
}

function seatItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  const { geometry } = stand;
  const items: ItemView[] = [];
  const hooked = rig.chains.filter((c) => c.hooked);
  const turns = hooked.reduce((sum, c) => sum + c.left + c.right, 0) / Math.max(1, 2 * hooked.length);
  const pressed = rig.saddle.on === 'board' || hooked.length === 0 ? 0 : inEighths(turns / STOP_TURNS);
  if (rig.seatRing.piece !== null) {
    const own = { ...sized(rig, rig.seatRing.piece, spec), squeeze: pressed };
    const lift = rig.tee.at === 'coupling' ? rig.tee.turnsBack * stand.pitchM : 0;
    items.push({ id: rig.seatRing.piece, kind: 'seatRing', spec: own, position: [0, 0, geometry.bossZM + lift], ...still }); // prettier-ignore
  }
  const { gasket, collar, bolts } = rig.collar;
  if (gasket !== null) {
    const own = { ...sized(rig, gasket, spec), squeeze: inEighths((bolts[0] + bolts[1]) / 2 / BOLT_TURNS) };
    items.push({
      id: gasket,
      kind: 'cupGasket',
      spec: own,
      position: [0, 0, geometry.couplingTopZM],
      ...still,
    });
  }
  if (collar !== null) {
    items.push({
      id: collar,
      kind: 'splitCollar',
      spec: sized(rig, collar, spec),
      position: [0, 0, 0],
      ...still,
      joints: { leftBoltTurns: bolts[0], rightBoltTurns: bolts[1] },
    });
  }
  const span = pieces.saddle.dims().chainHalfSpanM;
  rig.saddle.cradles.forEach((id, i) => {
    items.push({ id, kind: 'cradleBlock', spec, position: [i === 0 ? span : -span, 0, -geometry.mainRadiusM], ...still }); // prettier-ignore
  });
  return items;
}

function standingItems(rig: RigState, stand: Stand, spec: ShapeSpec, shown: Shown): ItemView[] {
  const head = shown.readings?.headGaugePa ?? 0;
  const joints = {
    valveRad: rig.valve.openRad,
    bleedRad: rig.bleed.openRad,
    ventOpen: rig.testHead.ventOpen,
    pumpStroke: strokeAt(rig, shown),
    needleRad: DIAL_SWEEP_RAD * (Math.max(-0.02, Math.min(1.03, head / GAUGE_RANGE_PA)) - 0.5),
  };
  return stand.standing.map((s) => ({
    id: s.id,
    kind: s.kind,
    spec,
    position: leaned(stand, 0, 0, s.seatZM),
    turns: 0,
    tiltRad: stand.tiltRad,
    joints,
  }));
}

/** How far the plunger is pushed in, 0 to 1: in and out again once a stroke, out when the last is done. */
function strokeAt({ testHead }: RigState, { readings }: Shown): number {
  if (readings === null || testHead.strokes === 0) return 0;
  const left = Math.max(0, (testHead.pumpUntilS - readings.atS) * constants.pumpStrokesPerS.value);
  return 1 - Math.abs(1 - 2 * (left % 1));
}

function rodItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  if (stand.rodZM === null || stand.tipZM === null) return [];
  const { tip, collarTravelM, travelM } = rig.rod;
  const turns = rodTurns(rig, stand);
  const items: ItemView[] = [];
  const on = (id: string, kind: PieceKind, zM: number, own: ShapeSpec): ItemView => ({
    id,
    kind,
    spec: own,
    position: leaned(stand, 0, 0, zM),
    turns,
    tiltRad: stand.tiltRad,
    joints: { innerTurns: rig.stopper.squeezeTurns },
  });
  items.push(on('rod', 'rod', stand.rodZM, spec));
  if (tip !== null) items.push(on(tip, rig.kit[tip].kind, stand.tipZM, sized(rig, tip, spec)));
  const barrel = stand.standing.find((s) => s.kind === 'rodBarrel');
  if (collarTravelM !== null && barrel) {
    // It meets the gland when the rod has gone down to the set travel, so it rides this far above the gland now.
    const { glandHeightM } = pieces.rodBarrel.dims();
    const collar = Object.values(rig.kit).find((p) => p.kind === 'depthCollar');
    const zM = barrel.topZM + glandHeightM + (collarTravelM - travelM);
    items.push(on(collar?.id ?? 'depthCollar', 'depthCollar', zM, spec));
  }
  return items;
}

function triedItems(rig: RigState, stand: Stand, spec: ShapeSpec, shown: Shown): ItemView[] {
  const ring = Object.values(rig.kit).find((p) => p.kind === 'gaugeRing');
  const position = gaugeRingAt(rig, stand);
  if (shown.doing?.kind !== 'gaugeRing.try' || ring === undefined || position === null) return [];
  return [{ id: ring.id, kind: 'gaugeRing', spec, position, ...still }];
}

function stopperItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  const zM = stopperZM(rig, stand);
  const id = rig.stopper.piece;
  if (zM === null || id === null) return [];
  const own = { ...sized(rig, id, spec), squeeze: inEighths(rig.stopper.squeezeTurns / FIRM_TURNS) };
  const turns = rig.stopper.at === 'holder' ? rig.rod.turns : 0;
  return [{ id, kind: 'boreStopper', spec: own, position: [0, 0, zM], turns, tiltRad: rig.stopper.tiltRad, joints: {} }]; // prettier-ignore
}
