import { constants, pieces, pipes } from '../catalogue/index.ts';
import { circleM2, pumpStrokeMol, type Cell, type Link } from '../physics/index.ts';
import { ATM_PA } from '../units/index.ts';
import { workOf, type Job } from './job.ts';
import { benchKeeper, benchStopper } from './renewalTee.ts';
import { renewed } from './reach.ts';
import type { SeatOpening } from './seats.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';
import { stopperOpening } from './stopping.ts';

const c = constants;

/** Where the bench stands and the riser ends: open air that no draught brings back to the hole. */
export const OUTDOORS = 'outdoors';

/** A line is this many cells, as the old service is. */
export const LINE_CELLS = 3;

/** The house end of the line that leaves the renewal tee. */
export function houseCell(job: Job): string {
  return workOf(job) === 'renew' ? `line${LINE_CELLS}` : `service${LINE_CELLS}`;
}

/** The main end of that line. */
export function mainEndCell(job: Job): string {
  return workOf(job) === 'renew' ? 'line1' : 'service1';
}

/** The line is joined to the tee's branch. */
export function joined(rig: RigState): boolean {
  return renewed(rig) && rig.line.tieIn !== null;
}

/** What closes the main end of the line before it is joined. */
export function mainEndCapped(rig: RigState): boolean {
  return workOf(rig.job) === 'renew' ? rig.line.cap !== null : rig.branch.capped;
}

/** Pressure where the test set is joined, Pa gauge. */
export function testedGaugePa(rig: RigState, sense: Sense): number {
  return sense.gaugePa(rig.testSet.on === 'bench' ? 'bench' : houseCell(rig.job));
}

/** Gas space of the line that leaves the renewal tee, m³. */
export function lineVolumeM3(job: Job): number {
  const { service, renewal } = job.system;
  const lengthM = renewal?.line === 'new' ? renewal.lengthM : service.lengthM;
  return circleM2(pipes[service.nps].idM) * lengthM;
}

/** Cells that a renewal adds: the tee on its bench cap, and a new line once it is laid. */
export function renewalCells(rig: RigState): Cell[] {
  const cells: Cell[] = [];
  if (rig.testSet.on === 'bench') cells.push({ id: 'bench', volumeM3: pieces.testSet.netVolumeM3 });
  if (!rig.line.laid) return cells;
  const volumeM3 = lineVolumeM3(rig.job) / LINE_CELLS;
  for (let i = 1; i <= LINE_CELLS; i += 1) cells.push({ id: `line${i}`, volumeM3 });
  return cells;
}

/** What the gas of a renewal moves through; `joinLeak` is what the tie-in lets into the hole. */
export function renewalLinks(rig: RigState, sense: Sense, joinLeak: readonly SeatOpening[]): Link[] {
  return [
    ...benchLinks(rig, sense),
    ...(rig.line.laid ? newLineLinks(rig) : []),
    ...houseEndLinks(rig),
    ...joinLeak.map((opening, i): Link => ({
      id: numbered('tieIn', i),
      from: 'barrel',
      to: 'hole',
      ...opening,
    })),
    ...testSetLinks(rig, sense),
  ];
}

const numbered = (id: string, i: number): string => (i === 0 ? id : `${id}.${i}`);

/** Air under the renewal tee's stopper on the bench: what passes it comes out of the open branch. */
function benchLinks(rig: RigState, sense: Sense): Link[] {
  if (rig.testSet.on !== 'bench') return [];
  const onBench: RigState = {
    ...rig,
    tee: { ...rig.tee, at: 'coupling' },
    renewal: { ...rig.renewal, at: 'coupling' },
    stopper: benchStopper(rig),
    keeper: benchKeeper(rig),
  };
  const openings = stopperOpening(onBench, sense.gaugePa('bench'), sense.atS);
  return openings.map((opening, i): Link => ({
    id: numbered('benchTee', i),
    from: 'bench',
    to: OUTDOORS,
    ...opening,
  }));
}

/** A new line in its trench: pipe from cell to cell, its own joints, and its main end while that stands open. */
function newLineLinks(rig: RigState): Link[] {
  const { service } = rig.job.system;
  const idM = pipes[service.nps].idM;
  const links: Link[] = [];
  for (let i = 1; i < LINE_CELLS; i += 1) {
    links.push({
      id: `line.${i}`,
      from: `line${i}`,
      to: `line${i + 1}`,
      law: 'pipe',
      diameterM: idM,
      lengthM: (rig.job.system.renewal?.lengthM ?? service.lengthM) / LINE_CELLS,
      roughnessM: c.pipeRoughnessM.value,
    });
  }
  if (rig.line.cap === null && !joined(rig)) {
    const cdAM2 = c.boreDischarge.value * circleM2(idM);
    links.push({ id: 'lineOpen', from: 'line1', to: 'hole', law: 'orifice', cdAM2 });
  }
  return links;
}

/** The house end: joints of the line, which leak fluid looks at, and the riser's cock. */
function houseEndLinks(rig: RigState): Link[] {
  const { renewal } = rig.job.system;
  if (renewal === undefined || (renewal.line === 'new' && !rig.line.laid)) return [];
  const house = houseCell(rig.job);
  const links: Link[] = [
    {
      id: 'lineEnds',
      from: house,
      to: OUTDOORS,
      law: 'orifice',
      cdAM2: c.goodJointCdAM2.value + renewal.lineLeakCdAM2,
    },
  ];
  if (rig.line.riserOpen > 0) {
    const cdAM2 = rig.line.riserOpen * c.bleedDischarge.value * circleM2(pieces.purgeRiser.dims().orificeM);
    links.push({ id: 'riser', from: house, to: OUTDOORS, law: 'orifice', cdAM2 });
  }
  return links;
}

/** Vent and pump of the test set, wherever it is joined. */
function testSetLinks(rig: RigState, sense: Sense): Link[] {
  const { on, ventOpen, pumpUntilS } = rig.testSet;
  if (on === null) return [];
  const cell = on === 'bench' ? 'bench' : houseCell(rig.job);
  const links: Link[] = [];
  if (ventOpen > 0) {
    const cdAM2 = ventOpen * c.bleedDischarge.value * circleM2(c.bleedDiameterM.value);
    links.push({ id: 'testVent', from: cell, to: OUTDOORS, law: 'orifice', cdAM2 });
  }
  if (pumpUntilS > sense.atS) {
    const stroke = pumpStrokeMol(c.pumpStrokeM3.value, ATM_PA, rig.job.system.temperatureK);
    const molPerS = stroke * c.pumpStrokesPerS.value;
    links.push({ id: 'testPump', from: OUTDOORS, to: cell, law: 'source', molPerS });
  }
  return links;
}
