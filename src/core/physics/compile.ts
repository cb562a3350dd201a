import { GAS_CONSTANT } from '../units/index.ts';
import { type BlockMatrix, blockMatrix } from './blockMatrix.ts';
import { type Elimination, planElimination } from './elimination.ts';
import type { FlowAt, Mixture } from './flowAt.ts';
import { isOneWay, linkLaw, type LinkLaw } from './linkLaw.ts';
import type { Network } from './network.ts';
import { nozzleCurve } from './nozzle.ts';
import type { CurvePair } from './orificeFlow.ts';

/** Numbers of one evaluation of all links, kept between evaluations only to spare memory. */
export interface Flows {
  /** Flow of air and gas through each link, mol/s. */
  air: Float64Array;
  gas: Float64Array;
  /**
   * Eight slopes a link, 1/s: of the air flow by air and gas of the `from` cell and of the `to` cell, then the same
   * of the gas flow. Zero against a boundary.
   */
  slopes: Float64Array;
  /** Flow by time, mol/s², where boundary pressures move. */
  airByTime: Float64Array;
  gasByTime: Float64Array;
}

/** Work space of the solver. Nothing read from it was left there by an earlier step. */
export interface Scratch {
  pressurePa: Float64Array;
  fraction: Float64Array;
  totalMol: Float64Array;
  flows: Flows;
  mixture: Mixture;
  flowAt: FlowAt;
  matrix: BlockMatrix;
  /** Stage vectors of the cells (air and gas interleaved) and of the links, four each. */
  cellStages: Float64Array[];
  linkAirStages: Float64Array[];
  linkGasStages: Float64Array[];
  /** What passed each link since the state was loaded, mol. */
  linkAirMol: Float64Array;
  linkGasMol: Float64Array;
  state: Float64Array;
  stage: Float64Array;
  donors: Int32Array;
}

/** A network made ready for the solver: indexes, numbers laid flat, scratch. Results never depend on the scratch. */
export interface CompiledNetwork {
  readonly network: Network;
  readonly cellCount: number;
  readonly linkCount: number;
  /** Nodes: cells first, then boundaries. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly oneWay: Uint8Array;
  readonly elimination: Elimination;
  readonly laws: readonly LinkLaw[];
  readonly curves: CurvePair;
  /** R·T/V of every cell, Pa/mol. */
  readonly paPerMol: Float64Array;
  /** How fast the pressure of a node moves by itself, Pa/s; cells first, then boundaries. */
  readonly rampPaPerS: Float64Array;
  readonly moving: boolean;
  readonly scratch: Scratch;
}

/**
 * Makes a network ready. Cheap (µs): do it whenever the assembly changes. Throws RangeError on an unknown or doubled
 * id, a volume that is not positive, or a size no opening can have.
 */
export function compile(network: Network): CompiledNetwork {
  const { cells, boundaries, links } = network;
  const cellCount = cells.length;
  const linkCount = links.length;
  const names: string[] = [];
  const paPerMol = new Float64Array(cellCount);
  for (let i = 0; i < cellCount; i += 1) {
    if (!(cells[i].volumeM3 > 0)) throw new RangeError(`Cell ${cells[i].id} has no volume.`);
    paPerMol[i] = (GAS_CONSTANT * network.temperatureK) / cells[i].volumeM3;
    names.push(cells[i].id);
  }
  const rampPaPerS = new Float64Array(cellCount + boundaries.length);
  let moving = false;
  for (let i = 0; i < boundaries.length; i += 1) {
    const { id, ramp } = boundaries[i];
    names.push(id);
    if (ramp === undefined) continue;
    rampPaPerS[cellCount + i] = ramp.ratePaPerS;
    moving = true;
  }
  if (hasDouble(names)) throw new RangeError('Two places have one name.');
  const from = new Int32Array(linkCount);
  const to = new Int32Array(linkCount);
  const oneWay = new Uint8Array(linkCount);
  const laws: LinkLaw[] = [];
  const linkNames: string[] = [];
  for (let l = 0; l < linkCount; l += 1) {
    const link = links[l];
    from[l] = nodeOf(names, link.from);
    to[l] = nodeOf(names, link.to);
    oneWay[l] = isOneWay(link) ? 1 : 0;
    laws.push(linkLaw(link));
    linkNames.push(link.id);
  }
  if (hasDouble(linkNames)) throw new RangeError('Two links have one name.');
  return {
    network,
    cellCount,
    linkCount,
    from,
    to,
    oneWay,
    elimination: planElimination(cellCount, from, to),
    laws,
    curves: {
      air: nozzleCurve(network.air.heatCapacityRatio),
      gas: nozzleCurve(network.gas.heatCapacityRatio),
    },
    paPerMol,
    rampPaPerS,
    moving,
    scratch: scratchFor(network),
  };
}

function hasDouble(names: readonly string[]): boolean {
  for (let i = 1; i < names.length; i += 1) if (names.indexOf(names[i]) < i) return true;
  return false;
}

function nodeOf(names: readonly string[], id: string): number {
  const node = names.indexOf(id);
  if (node < 0) throw new RangeError(`No cell or boundary is called ${id}.`);
  return node;
}

type Room = Omit<Scratch, 'mixture'>;

/** Work space is kept by size: networks of one size share it, since nothing in it outlives a step. */
const rooms = new Map<number, Room>();

function scratchFor(network: Network): Scratch {
  const cells = network.cells.length;
  const links = network.links.length;
  const nodes = cells + network.boundaries.length;
  const key = (cells * 1024 + nodes) * 1024 + links;
  let room = rooms.get(key);
  if (room === undefined) {
    room = roomFor(cells, nodes, links);
    rooms.set(key, room);
  }
  return {
    ...room,
    mixture: {
      fraction: 0,
      molarMassKgPerMol: network.air.molarMassKgPerMol,
      molarMassSlope: network.gas.molarMassKgPerMol - network.air.molarMassKgPerMol,
      viscosityPaS: network.air.viscosityPaS,
      viscositySlope: network.gas.viscosityPaS - network.air.viscosityPaS,
      rt: GAS_CONSTANT * network.temperatureK,
    },
  };
}

function roomFor(cells: number, nodes: number, links: number): Room {
  const four = (size: number): Float64Array[] => [0, 1, 2, 3].map(() => new Float64Array(size));
  return {
    pressurePa: new Float64Array(nodes),
    fraction: new Float64Array(nodes),
    totalMol: new Float64Array(nodes),
    flows: {
      air: new Float64Array(links),
      gas: new Float64Array(links),
      slopes: new Float64Array(8 * links),
      airByTime: new Float64Array(links),
      gasByTime: new Float64Array(links),
    },
    flowAt: { molPerS: 0, byFrom: 0, byTo: 0, byFraction: 0 },
    matrix: blockMatrix(cells),
    cellStages: four(2 * cells),
    linkAirStages: four(links),
    linkGasStages: four(links),
    linkAirMol: new Float64Array(links),
    linkGasMol: new Float64Array(links),
    state: new Float64Array(2 * cells),
    stage: new Float64Array(2 * cells),
    donors: new Int32Array(links),
  };
}
