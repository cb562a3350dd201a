import { GAS_CONSTANT } from '../units/index.ts';
import { type BlockMatrix, blockMatrix } from './blockMatrix.ts';
import { type Elimination, planElimination } from './elimination.ts';
import type { FlowAt, Mixture } from './flowAt.ts';
import { isOneWay, linkLaw, type LinkLaw } from './linkLaw.ts';
import type { Link, Network } from './network.ts';
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

/** What of a network ready for the solver hangs on its places and links alone, not on their sizes. */
type Shape = Pick<CompiledNetwork, 'cellCount' | 'linkCount' | 'from' | 'to' | 'oneWay' | 'elimination'>;

/**
 * Makes a network ready. Cheap (µs): do it whenever the assembly changes; cheaper still with one made ready before
 * that has the same places and links in other sizes. Throws RangeError on an unknown or doubled id, a volume that is
 * not positive, or a size no opening can have.
 */
export function compile(network: Network, like: CompiledNetwork | null = null): CompiledNetwork {
  const { boundaries, links } = network;
  const alike = like !== null && sameShape(like.network, network);
  const shape = alike ? like : shapeOf(network);
  const oneGas = alike && sameGas(like.network, network);
  const sameCells = oneGas && sameVolumes(like.network, network);
  const moving = boundaries.some((one) => one.ramp !== undefined);
  const laws: LinkLaw[] = [];
  for (let l = 0; l < links.length; l += 1) {
    const kept = alike && samePipe(like.network.links[l], links[l]);
    laws.push(kept ? like.laws[l] : linkLaw(links[l]));
  }
  return {
    network,
    cellCount: shape.cellCount,
    linkCount: shape.linkCount,
    from: shape.from,
    to: shape.to,
    oneWay: shape.oneWay,
    elimination: shape.elimination,
    laws,
    curves: oneGas ? like.curves : curvesOf(network),
    paPerMol: sameCells ? like.paPerMol : paPerMolOf(network),
    rampPaPerS: alike && !moving && !like.moving ? like.rampPaPerS : rampsOf(network),
    moving,
    scratch: oneGas ? like.scratch : scratchFor(network),
  };
}

function curvesOf({ air, gas }: Network): CurvePair {
  return { air: nozzleCurve(air.heatCapacityRatio), gas: nozzleCurve(gas.heatCapacityRatio) };
}

function rampsOf({ cells, boundaries }: Network): Float64Array {
  return Float64Array.from([...cells.map(() => 0), ...boundaries.map((one) => one.ramp?.ratePaPerS ?? 0)]);
}

function paPerMolOf({ cells, temperatureK }: Network): Float64Array {
  const paPerMol = new Float64Array(cells.length);
  for (let i = 0; i < cells.length; i += 1) {
    if (!(cells[i].volumeM3 > 0)) throw new RangeError(`Cell ${cells[i].id} has no volume.`);
    paPerMol[i] = (GAS_CONSTANT * temperatureK) / cells[i].volumeM3;
  }
  return paPerMol;
}

function sameGas(a: Network, b: Network): boolean {
  return a.temperatureK === b.temperatureK && a.air === b.air && a.gas === b.gas;
}

function sameVolumes(a: Network, b: Network): boolean {
  for (let i = 0; i < a.cells.length; i += 1) if (a.cells[i].volumeM3 !== b.cells[i].volumeM3) return false;
  return true;
}

function shapeOf({ cells, boundaries, links }: Network): Shape {
  const names = [...cells, ...boundaries].map((place) => place.id);
  if (hasDouble(names)) throw new RangeError('Two places have one name.');
  if (hasDouble(links.map((link) => link.id))) throw new RangeError('Two links have one name.');
  const from = new Int32Array(links.length);
  const to = new Int32Array(links.length);
  const oneWay = new Uint8Array(links.length);
  for (let l = 0; l < links.length; l += 1) {
    from[l] = nodeOf(names, links[l].from);
    to[l] = nodeOf(names, links[l].to);
    oneWay[l] = isOneWay(links[l]) ? 1 : 0;
  }
  const elimination = planElimination(cells.length, from, to);
  return { cellCount: cells.length, linkCount: links.length, from, to, oneWay, elimination };
}

/** The same places and links in the same order, of whatever size. */
export function sameShape(a: Network, b: Network): boolean {
  if (!sameIds(a.cells, b.cells) || !sameIds(a.boundaries, b.boundaries)) return false;
  if (!sameIds(a.links, b.links)) return false;
  for (let l = 0; l < a.links.length; l += 1) {
    const one = a.links[l];
    const other = b.links[l];
    if (one.from !== other.from || one.to !== other.to || one.law !== other.law) return false;
  }
  return true;
}

function sameIds(a: readonly { readonly id: string }[], b: readonly { readonly id: string }[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (a[i].id !== b[i].id) return false;
  return true;
}

/** Two pipes of one size, whose friction need not be worked out again. */
function samePipe(a: Link, b: Link): boolean {
  return (
    a.law === 'pipe' &&
    b.law === 'pipe' &&
    a.diameterM === b.diameterM &&
    a.lengthM === b.lengthM &&
    a.roughnessM === b.roughnessM &&
    a.lossK === b.lossK
  );
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
