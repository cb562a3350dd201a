import { pieces } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import { renewalItems } from './renewal.ts';
import { cutAtM, SAW_GAP_M } from '../pieces/serviceLine.ts';
import type { ShapeSpec } from '../pieces/part.ts';
import type { Vec3 } from '../shape/solid.ts';
import type { Stand } from './stand.ts';
import type { ItemView } from './view.ts';

const still = { turns: 0, tiltRad: 0, joints: {} } as const;
const atOrigin: Vec3 = [0, 0, 0];

/** Main, coupling, tee, service and what is screwed into them. */
export function workpieceItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  const items: ItemView[] = [
    { id: 'main', kind: 'main', spec, position: atOrigin, ...still },
    { id: 'coupling', kind: 'coupling', spec, position: atOrigin, ...still },
  ];
  const tee = teePlace(rig, stand);
  if (tee !== null) {
    const trimmed = { ...spec, variant: rig.tee.trim };
    const at: Vec3 = [0, 0, tee.axisZM];
    items.push({
      id: rig.renewal.at === 'coupling' ? (rig.renewal.piece ?? 'renewalTee') : 'serviceTee',
      kind: rig.renewal.at === 'coupling' ? 'renewalTee' : 'serviceTee',
      spec: trimmed,
      position: at,
      ...still,
      turns: tee.turns,
    });
    if (rig.branch.cut === 'through' && rig.tee.trim === 'whole') {
      const stub = { ...spec, variant: 'stub' };
      items.push({
        id: 'serviceStub',
        kind: 'serviceLine',
        spec: stub,
        position: at,
        ...still,
        turns: tee.turns,
      });
    }
  }
  items.push(...serviceItems(rig, stand, spec), ...renewalItems(rig, stand, spec));
  const plug = plugPlace(rig, stand);
  if (plug)
    items.push({
      id: 'topPlug',
      kind: 'topPlug',
      spec: freely(spec, rig.plug.at === 'rod'),
      position: [0, 0, plug.zM],
      ...still,
      turns: plug.turns,
    });
  const keeper = keeperPlace(rig, stand);
  if (keeper && rig.keeper.piece !== null) {
    const own = freely(sized(rig, rig.keeper.piece, spec), rig.keeper.engagedTurns === 0);
    items.push({ id: rig.keeper.piece, kind: 'keeperPlug', spec: own, position: [0, 0, keeper.zM], ...still, turns: keeper.turns }); // prettier-ignore
  }
  const closing = closingPlace(rig, stand);
  if (closing && rig.closing.piece !== null) {
    const own = freely(sized(rig, rig.closing.piece, spec), rig.closing.engagedTurns === 0);
    items.push({ id: rig.closing.piece, kind: 'closingPlug', spec: own, position: [0, 0, closing.zM], ...still, turns: closing.turns, tiltRad: rig.closing.crossed ? 0.04 : 0 }); // prettier-ignore
  }
  return items;
}

function serviceItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  const axisZM = stand.geometry.portAxisZM;
  const cut = rig.branch.cut === 'through';
  const items: ItemView[] = [
    {
      id: 'serviceLine',
      kind: 'serviceLine',
      spec: {
        ...spec,
        teeSize: rig.job.system.service.nps,
        variant: rig.branch.cut === 'through' ? 'cut' : rig.branch.cut,
      },
      position: [0, 0, axisZM],
      ...still,
    },
  ];
  if (cut && rig.branch.capped) {
    const end = cutAtM(pieces.serviceTee.dims(rig.job.workpiece.teeSize).axisToBossM) + SAW_GAP_M;
    const cap = { ...spec, teeSize: rig.job.system.service.nps };
    items.push({
      id: serviceCapOf(rig),
      kind: 'serviceCap',
      spec: cap,
      position: [0, end, axisZM],
      ...still,
    });
  }
  return items;
}

/** A thread out of its hole is drawn as a helix. */
const freely = (spec: ShapeSpec, free: boolean): ShapeSpec => (free ? { ...spec, variant: 'free' } : spec);

const serviceCapOf = (rig: RigState): string =>
  Object.values(rig.kit).find((p) => p.kind === 'serviceCap' && p.where === 'rig')?.id ?? 'serviceCap';

interface Place {
  readonly zM: number;
  readonly turns: number;
}

/** Branch axis of the tee and how far it is turned; null once it is out of the hole's picture. */
export function teePlace(rig: RigState, stand: Stand): { axisZM: number; turns: number } | null {
  const { geometry, pitchM, tipZM } = stand;
  if (rig.tee.at === 'coupling') {
    return { axisZM: geometry.portAxisZM + rig.tee.turnsBack * pitchM, turns: -rig.tee.turnsBack };
  }
  if (rig.tee.at === 'rod' && tipZM !== null) {
    // It hangs by the keeper's square, and the keeper may not stand fully home in it.
    const keeperUpM = rig.keeper.at === 'tee' ? (stand.madeUpTurns - rig.keeper.engagedTurns) * pitchM : 0;
    return {
      axisZM: tipZM - (geometry.plugShoulderZM - geometry.portAxisZM) - keeperUpM,
      turns: rig.rod.turns - rig.tee.turnsBack,
    };
  }
  return null;
}

/** How far the tee's top has risen with the tee, m. */
const teeLiftM = (rig: RigState, stand: Stand): number => rig.tee.turnsBack * stand.pitchM;

function plugPlace(rig: RigState, stand: Stand): Place | null {
  if (rig.plug.at === 'tee') {
    const tee = teePlace(rig, stand);
    if (tee === null) return null;
    const shoulder = tee.axisZM + (stand.geometry.plugShoulderZM - stand.geometry.portAxisZM);
    return { zM: shoulder + rig.plug.turnsBack * stand.pitchM, turns: tee.turns - rig.plug.turnsBack };
  }
  return rig.plug.at === 'rod' && stand.tipZM !== null
    ? { zM: stand.tipZM, turns: rig.rod.turns - rig.plug.turnsBack }
    : null;
}

function keeperPlace(rig: RigState, stand: Stand): Place | null {
  const out = stand.madeUpTurns - rig.keeper.engagedTurns;
  if (rig.keeper.at === 'tee') {
    const tee = teePlace(rig, stand);
    if (tee === null) return null;
    const shoulder = tee.axisZM + (stand.geometry.plugShoulderZM - stand.geometry.portAxisZM);
    return { zM: shoulder + out * stand.pitchM, turns: tee.turns - out };
  }
  return rig.keeper.at === 'rod' && stand.tipZM !== null
    ? { zM: stand.tipZM, turns: rig.rod.turns - out }
    : null;
}

function closingPlace(rig: RigState, stand: Stand): Place | null {
  const out = stand.madeUpTurns - rig.closing.engagedTurns;
  if (rig.closing.at === 'coupling') {
    return { zM: stand.geometry.closingShoulderZM + out * stand.pitchM, turns: -out };
  }
  return rig.closing.at === 'rod' && stand.tipZM !== null
    ? { zM: stand.tipZM, turns: rig.rod.turns - out }
    : null;
}

/** How far the rod is turned: with whatever its tip is on, and besides that by itself. */
export function rodTurns(rig: RigState, stand: Stand): number {
  const on = rig.rod.engaged ?? rig.rod.load;
  const own = rig.rod.turns;
  const out = (engaged: number) => stand.madeUpTurns - engaged;
  switch (on) {
    case 'plug':
      return own - rig.plug.turnsBack;
    case 'keeper':
      return own - out(rig.keeper.engagedTurns) - (rig.keeper.at === 'tee' ? rig.tee.turnsBack : 0);
    case 'closing':
      return own - out(rig.closing.engagedTurns);
    case 'tee':
      return own - out(rig.keeper.engagedTurns) - rig.tee.turnsBack;
    default:
      return own;
  }
}

/** Top of the stopper's upper washer, m; null while it is not in the picture. */
export function stopperZM(rig: RigState, stand: Stand): number | null {
  if (rig.stopper.piece === null) return null;
  if (rig.stopper.at === 'holder') return stand.tipZM;
  if (rig.stopper.at !== 'set' && rig.stopper.at !== 'fallen') return null;
  const lift = rig.tee.at === 'coupling' ? teeLiftM(rig, stand) : 0;
  if (rig.tee.at === 'rod') {
    const tee = teePlace(rig, stand);
    return tee === null ? null : tee.axisZM - belowAxisM(rig, stand);
  }
  return rig.tee.at === 'coupling' ? stand.geometry.portUndersideZM - rig.stopper.belowPortM + lift : null;
}

const belowAxisM = (rig: RigState, stand: Stand): number =>
  stand.geometry.portAxisZM - stand.geometry.portUndersideZM + rig.stopper.belowPortM;

/** Real size of a kit piece where it has a tee's size; otherwise that of the job. */
export function sized(rig: RigState, id: string, spec: ShapeSpec): ShapeSpec {
  const size = rig.kit[id]?.trueSize;
  return size === '3/4' || size === '1' || size === '1-1/4' ? { ...spec, teeSize: size } : spec;
}
