import { constants, constantsByTeeSize, pieces, pipes } from '../catalogue/index.ts';
import {
  ballValveAreaM2,
  circleM2,
  pumpStrokeMol,
  selfEnergisedLeakCdAM2,
  type Boundary,
  type Cell,
  type Link,
  type Network,
} from '../physics/index.ts';
import { ATM_PA, psi } from '../units/index.ts';
import { mainBoundaries, mainCells, mainGaugePa, mainLinks } from './mainFeed.ts';
import { joined, mainEndCell, OUTDOORS, renewalCells, renewalLinks } from './line.ts';
import { seatOpenings } from './seats.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';
import { stopperOpening } from './stopping.ts';
import { troubleSize } from './troubles.ts';
import {
  asLinks,
  closingOpening,
  keeperOpening,
  plugOpening,
  teeThreadOpening,
  tieInOpening,
  weldOpening,
} from './threads.ts';

const c = constants;

/** The service line is this many cells. */
export const SERVICE_CELLS = 3;
/** Places the gas can go to that are not cells. */
export const boundaryIds = { main: 'main', hole: 'hole', street: 'street', far: 'far' } as const;

/** Joint torque below which it counts as loose, N·m. */
export const LOOSE_JOINT_NM = 15;

/** True while the saddle stands over the open coupling or the tee in it, so that the tee is inside the chamber. */
export function teeInside(rig: RigState): boolean {
  return rig.saddle.on === 'coupling';
}

/** Volumes of the cells as the rig stands, m³. */
export function cellsOf(rig: RigState): Cell[] {
  const cells: Cell[] = [];
  const { service } = rig.job.system;
  const serviceM3 = circleM2(pipes[service.nps].idM) * service.lengthM + troubleSize(rig, 'unknownBranch');
  for (let i = 1; i <= SERVICE_CELLS; i += 1)
    cells.push({ id: `service${i}`, volumeM3: serviceM3 / SERVICE_CELLS });
  if (rig.tee.at === 'coupling') cells.push({ id: 'barrel', volumeM3: barrelM3(rig) });
  const chamber = chamberM3(rig);
  if (chamber > 0) cells.push({ id: 'chamber', volumeM3: chamber });
  const above = aboveM3(rig);
  if (above > 0) cells.push({ id: 'above', volumeM3: above });
  cells.push(...renewalCells(rig), ...mainCells(rig));
  return cells;
}

function barrelM3(rig: RigState): number {
  const tee = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  return circleM2(tee.portIdM) * (tee.axisToBossM + tee.portIdM);
}

/** Gas under the ball, m³; the ball's own bore counts to it. 0 without a saddle. */
export function chamberM3(rig: RigState): number {
  if (rig.saddle.on === 'board') return 0;
  const valveAt = rig.stack.findIndex((p) => p.kind === 'isolationValve');
  const second = constantsByTeeSize.saddleNetSecondM3[rig.job.workpiece.teeSize];
  let volume = (rig.saddle.on === 'tee' ? c.saddleNetFirstM3 : second).value;
  const below = valveAt < 0 ? rig.stack.length : valveAt;
  for (let i = 0; i < below; i += 1) volume += pieceVolumeM3(rig.stack[i].kind);
  if (valveAt >= 0) volume += c.valveBelowBallM3.value + c.valveBallM3.value;
  return volume;
}

/** Gas above the ball, m³; 0 without a valve. */
export function aboveM3(rig: RigState): number {
  const valveAt = rig.stack.findIndex((p) => p.kind === 'isolationValve');
  if (valveAt < 0) return 0;
  let volume = c.valveAboveBallM3.value;
  for (let i = valveAt + 1; i < rig.stack.length; i += 1) volume += pieceVolumeM3(rig.stack[i].kind);
  return volume;
}

/** Gas a piece of the stack adds, m³. */
export function pieceVolumeM3(kind: string): number {
  switch (kind) {
    case 'lowerSpool':
      return c.spoolLowerM3.value;
    case 'upperSpool':
      return c.spoolUpperM3.value;
    case 'rodBarrel':
      return c.rodBarrelNetM3.value;
    case 'sightCap':
      return c.sightCapM3.value;
    case 'testHead':
      return c.testHeadM3.value;
    default:
      return 0;
  }
}

const closers: readonly string[] = ['testHead', 'sightCap', 'rodBarrel', 'valveCap'];

/** The piece that closes the top of the stack, or null while it stands open. */
export function topPiece(rig: RigState): string | null {
  const last = rig.stack[rig.stack.length - 1];
  return last !== undefined && closers.includes(last.kind) ? last.id : null;
}

/** True when a piece of that kind closes the top of the stack. */
export function topIs(rig: RigState, kind: string): boolean {
  const top = topPiece(rig);
  return top !== null && rig.kit[top].kind === kind;
}

export function hasValve(rig: RigState): boolean {
  return rig.stack.some((p) => p.kind === 'isolationValve');
}

/** Everything gas can move through as the rig stands, with the seals as pressure and time have them now. */
export function layOut(rig: RigState, sense: Sense): Network {
  return {
    cells: cellsOf(rig),
    boundaries: boundariesOf(rig, sense.atS),
    links: [
      ...workpieceLinks(rig, sense),
      ...chamberLinks(rig, sense),
      ...stackLinks(rig, sense),
      ...renewalLinks(rig, sense, joined(rig) ? tieInOpening(rig) : []),
      ...mainLinks(rig),
    ],
    temperatureK: rig.job.system.temperatureK,
    gas: FUEL_GAS,
    air: AIR,
  };
}

const FUEL_GAS = {
  molarMassKgPerMol: c.gasMolarMassKgPerMol.value,
  heatCapacityRatio: c.gasHeatCapacityRatio.value,
  viscosityPaS: c.gasViscosityPaS.value,
};
const AIR = {
  molarMassKgPerMol: c.airMolarMassKgPerMol.value,
  heatCapacityRatio: c.airHeatCapacityRatio.value,
  viscosityPaS: c.airViscosityPaS.value,
};

function boundariesOf(rig: RigState, atS: number): Boundary[] {
  const { system } = rig.job;
  return [
    ...mainBoundaries(rig, atS),
    { id: boundaryIds.hole, pressureAbsPa: ATM_PA, gasFraction: 0 },
    { id: boundaryIds.street, pressureAbsPa: ATM_PA, gasFraction: 0 },
    ...(system.renewal === undefined ? [] : [{ id: OUTDOORS, pressureAbsPa: ATM_PA, gasFraction: 0 }]),
    { id: boundaryIds.far, pressureAbsPa: ATM_PA + system.service.beyondCurbGaugePa, gasFraction: 1 },
  ];
}

/** Main, tee, service and coupling. */
function workpieceLinks(rig: RigState, sense: Sense): Link[] {
  const links: Link[] = [];
  const { service } = rig.job.system;
  const idM = pipes[service.nps].idM;
  const around = teeInside(rig) ? 'chamber' : boundaryIds.hole;
  if (rig.tee.at === 'coupling') {
    const drop = mainGaugePa(rig, sense) - sense.gaugePa('barrel');
    links.push(...asLinks('bore', boundaryIds.main, 'barrel', stopperOpening(rig, drop, sense.atS)));
    links.push(...asLinks('teeThread', boundaryIds.main, around, teeThreadOpening(rig)));
    const top = rig.saddle.on === 'board' ? boundaryIds.hole : 'chamber';
    const topOpening = rig.keeper.at === 'tee' ? keeperOpening(rig) : plugOpening(rig);
    links.push(...asLinks(rig.keeper.at === 'tee' ? 'keeper' : 'plug', 'barrel', top, topOpening));
    links.push(...branchLinks(rig, around));
  } else {
    links.push(...asLinks('closing', boundaryIds.main, around, closingOpening(rig)));
  }
  links.push(...asLinks('weld', boundaryIds.main, around, weldOpening(rig)));
  for (let i = 1; i < SERVICE_CELLS; i += 1) {
    links.push({
      id: `service.${i}`,
      from: `service${i}`,
      to: `service${i + 1}`,
      law: 'pipe',
      diameterM: idM,
      lengthM: service.lengthM / SERVICE_CELLS,
      roughnessM: c.pipeRoughnessM.value,
    });
  }
  const rejoined = joined(rig) && mainEndCell(rig.job) === 'service1';
  if (rig.branch.cut === 'through' && !rig.branch.capped && !rejoined) {
    links.push({
      id: 'serviceEnd',
      from: 'service1',
      to: boundaryIds.hole,
      law: 'orifice',
      cdAM2: c.boreDischarge.value * circleM2(idM),
    });
  }
  const houses = (rig.site.curbOpen ? c.houseDemandCdAM2.value : 0) + troubleSize(rig, 'secondHouse');
  const curb = service.curbPassingCdAM2 + houses;
  if (curb > 0) {
    links.push({
      id: 'curb',
      from: `service${SERVICE_CELLS}`,
      to: boundaryIds.far,
      law: 'orifice',
      cdAM2: curb,
    });
  }
  return links;
}

function branchLinks(rig: RigState, around: string): Link[] {
  const { service } = rig.job.system;
  const idM = pipes[service.nps].idM;
  if (joined(rig)) return [portTo(rig, mainEndCell(rig.job))];
  if (rig.branch.cut === 'through') {
    return [
      {
        id: 'stub',
        from: 'barrel',
        to: around,
        law: 'orifice',
        cdAM2: c.boreDischarge.value * circleM2(idM),
      },
    ];
  }
  const bleedByCdAM2 = troubleSize(rig, 'excessFlow');
  // a device in the branch lets gas go on to the house and holds it from coming back
  const shuts: Link[] = [
    { id: 'port', from: 'barrel', to: 'service1', law: 'check', cdAM2: circleM2(idM) },
    { id: 'port.1', from: 'barrel', to: 'service1', law: 'orifice', cdAM2: bleedByCdAM2 },
  ];
  const links = bleedByCdAM2 > 0 ? shuts : [portTo(rig, 'service1')];
  if (rig.branch.cut === 'pilot' && !rig.branch.pilotPlugged) {
    const cdAM2 = c.boreDischarge.value * circleM2(c.pilotHoleDiameterM.value);
    links.push({ id: 'pilot', from: 'barrel', to: boundaryIds.hole, law: 'orifice', cdAM2 });
  }
  return links;
}

/** The branch as it runs into the first cell of its line. */
function portTo(rig: RigState, to: string): Link {
  const { service } = rig.job.system;
  return {
    id: 'port',
    from: 'barrel',
    to,
    law: 'pipe',
    diameterM: pipes[service.nps].idM,
    lengthM: service.lengthM / (2 * SERVICE_CELLS),
    roughnessM: c.pipeRoughnessM.value,
  };
}

/** Saddle seat and the joints below the ball. */
function chamberLinks(rig: RigState, sense: Sense): Link[] {
  if (rig.saddle.on === 'board') return [];
  const links = asLinks('seat', 'chamber', boundaryIds.hole, seatOpenings(rig, sense));
  const gauge = sense.gaugePa('chamber');
  for (const piece of rig.stack) {
    if (piece.kind !== 'isolationValve' && piece.kind !== 'lowerSpool') break;
    const cdAM2 = jointCdAM2(rig, piece.id, piece.jointNm, gauge);
    links.push({ id: `joint:${piece.kind}`, from: 'chamber', to: boundaryIds.hole, law: 'orifice', cdAM2 });
  }
  if (!hasValve(rig)) links.push({ id: 'open', from: 'chamber', to: boundaryIds.hole, ...rigBore() });
  return links;
}

function rigBore(): { law: 'orifice'; cdAM2: number } {
  return { law: 'orifice', cdAM2: c.boreDischarge.value * circleM2(c.rigBoreM.value) };
}

function jointCdAM2(rig: RigState, id: string, jointNm: number, gaugePa: number): number {
  const { oRingNickCdAM2, looseNm } = rig.kit[id].defects;
  const nick = oRingNickCdAM2 ?? 0;
  const loose = Math.min(jointNm, looseNm ?? jointNm) < LOOSE_JOINT_NM ? c.looseJointCdAM2.value : 0;
  const flaw = nick + loose;
  const grown = flaw > 0 ? selfEnergisedLeakCdAM2(flaw, c.oRingStressPa.value, gaugePa, psi(35)) : 0;
  return c.goodJointCdAM2.value + grown;
}

/** Valve, what stands above it, and what that lets out. */
function stackLinks(rig: RigState, sense: Sense): Link[] {
  const valveAt = rig.stack.findIndex((p) => p.kind === 'isolationValve');
  if (valveAt < 0) return [];
  const valve = rig.kit[rig.stack[valveAt].id];
  const dims = pieces.isolationValve.dims();
  const area = ballValveAreaM2(dims.boreM, 2 * dims.ballRadiusM, Math.PI / 2 - rig.valve.openRad);
  const { seatPassingCdAM2, filingsCdAM2 } = valve.defects;
  const seat = c.goodJointCdAM2.value + (seatPassingCdAM2 ?? 0) + (filingsCdAM2 ?? 0);
  const links: Link[] = [
    { id: 'ball', from: 'chamber', to: 'above', law: 'orifice', cdAM2: seat + c.boreDischarge.value * area },
  ];
  const gauge = sense.gaugePa('above');
  for (let i = valveAt + 1; i < rig.stack.length; i += 1) {
    const piece = rig.stack[i];
    const cdAM2 = jointCdAM2(rig, piece.id, piece.jointNm, gauge);
    const id = i === rig.stack.length - 1 ? 'joint:top' : `joint:${piece.kind}`;
    links.push({ id, from: 'above', to: boundaryIds.hole, law: 'orifice', cdAM2 });
  }
  const top = topPiece(rig);
  if (top === null) links.push({ id: 'open', from: 'above', to: boundaryIds.hole, ...rigBore() });
  else links.push(...topLinks(rig, top, sense));
  return links;
}

function topLinks(rig: RigState, top: string, sense: Sense): Link[] {
  const piece = rig.kit[top];
  const hoseEnd = rig.hose === 'away' ? boundaryIds.street : boundaryIds.hole;
  switch (piece.kind) {
    case 'rodBarrel':
      return [
        ...bleedLinks(rig, hoseEnd, 1 - (1 - (piece.defects.bleedBlocked ?? 0)) * throughHose(rig)),
        ...glandLinks(piece.defects.glandWeepCdAM2),
      ];
    case 'sightCap':
      return bleedLinks(rig, boundaryIds.hole, piece.defects.bleedBlocked ?? 0);
    case 'testHead':
      return testHeadLinks(rig, top, hoseEnd, sense);
    default:
      return [];
  }
}

/** Share of the hose's bore that is open. */
function throughHose(rig: RigState): number {
  return rig.hose === 'none' ? 1 : 1 - troubleSize(rig, 'hoseKinked');
}

function bleedLinks(rig: RigState, to: string, blocked: number): Link[] {
  if (rig.bleed.openRad <= 0) return [];
  const share = Math.min(1, rig.bleed.openRad / (Math.PI / 2)) * (1 - blocked);
  if (share <= 0) return [];
  const cdAM2 = share * c.bleedDischarge.value * circleM2(c.bleedDiameterM.value);
  return [{ id: 'bleed', from: 'above', to, law: 'orifice', cdAM2 }];
}

function glandLinks(weepCdAM2: number | undefined): Link[] {
  return [
    {
      id: 'gland',
      from: 'above',
      to: boundaryIds.hole,
      law: 'orifice',
      cdAM2: c.goodJointCdAM2.value + (weepCdAM2 ?? 0),
    },
  ];
}

function testHeadLinks(rig: RigState, id: string, hoseEnd: string, sense: Sense): Link[] {
  const { defects } = rig.kit[id];
  const links: Link[] = [
    {
      id: 'relief',
      from: 'above',
      to: boundaryIds.hole,
      law: 'relief',
      cdAM2: c.bleedDischarge.value * circleM2(c.reliefDiameterM.value),
      setDropPa: c.reliefLiftGaugePa.value,
      fullDropPa: c.reliefFullGaugePa.value,
    },
  ];
  const vent =
    rig.testHead.ventOpen * c.ventDischarge.value * circleM2(c.ventDiameterM.value) +
    (defects.ventNotShuttingCdAM2 ?? 0);
  if (vent > 0) links.push({ id: 'bleed', from: 'above', to: hoseEnd, law: 'orifice', cdAM2: vent });
  if ((defects.pumpCheckLeakCdAM2 ?? 0) > 0) {
    links.push({
      id: 'pumpCheck',
      from: 'above',
      to: boundaryIds.hole,
      law: 'orifice',
      cdAM2: defects.pumpCheckLeakCdAM2 ?? 0,
    });
  }
  if (rig.testHead.pumpUntilS > sense.atS) {
    const stroke = pumpStrokeMol(c.pumpStrokeM3.value, ATM_PA, rig.job.system.temperatureK);
    links.push({
      id: 'pump',
      from: boundaryIds.hole,
      to: 'above',
      law: 'source',
      molPerS: stroke * c.pumpStrokesPerS.value,
    });
  }
  return links;
}
