import { constants } from '../catalogue/index.ts';
import {
  compile,
  liftShare,
  linkRates,
  pressuresAbsPa,
  SILENCE_DB,
  soundLevelDb,
  type CompiledNetwork,
  type Boundary,
  type Contents,
  type LinkRates,
  type Network,
} from '../physics/index.ts';
import { ATM_PA } from '../units/index.ts';
import { leadingOf } from './places.ts';

const c = constants;

/** The last network made ready; results do not depend on whether it was kept. */
let kept: CompiledNetwork | null = null;

export function ready(network: Network): CompiledNetwork {
  if (kept === null || kept.network !== network) kept = compile(network, kept);
  return kept;
}

/** Gas at one moment: pressures of the cells, and flows of the links once somebody asks for them. */
export class GasView {
  readonly gaugePa: readonly number[];
  private rates: LinkRates | null = null;

  constructor(
    readonly network: Network,
    readonly contents: Contents,
    private readonly atS: number,
  ) {
    const gaugePa = pressuresAbsPa(ready(network), contents);
    for (let i = 0; i < gaugePa.length; i += 1) gaugePa[i] -= ATM_PA;
    this.gaugePa = gaugePa;
  }

  get flows(): LinkRates {
    this.rates ??= linkRates(ready(this.network), this.contents, this.atS);
    return this.rates;
  }
}

export function viewGas(network: Network, contents: Contents, atS: number): GasView {
  return new GasView(network, contents, atS);
}

/** Where a cell stands in the network, or −1. */
export function placeOf(network: Network, cell: string): number {
  for (let i = 0; i < network.cells.length; i += 1) if (network.cells[i].id === cell) return i;
  return -1;
}

/** Pressure of a cell, Pa gauge; 0 where there is none. */
export function gaugeOf(view: GasView, cell: string): number {
  const at = placeOf(view.network, cell);
  return at < 0 ? 0 : view.gaugePa[at];
}

const ear = {
  distanceM: c.earDistanceM.value,
  efficiency: c.acousticEfficiency.value,
  strouhal: c.jetStrouhal.value,
  bandHz: c.earBandHz.value,
};

/** Sound of one link at the ear, dB. Only openings of known area sound. */
function levelOf(view: GasView, at: number): number {
  const { airMolPerS, gasMolPerS } = view.flows;
  const total = Math.abs(airMolPerS[at] + gasMolPerS[at]);
  if (total <= 0) return SILENCE_DB;
  const share = Math.abs(gasMolPerS[at]) / total;
  const { gas, air, temperatureK } = view.network;
  const cdAM2 = openAreaM2(view, at);
  if (cdAM2 <= 0) return SILENCE_DB;
  const molar = share * gas.molarMassKgPerMol + (1 - share) * air.molarMassKgPerMol;
  const mixed = {
    molarMassKgPerMol: molar,
    heatCapacityRatio: share * gas.heatCapacityRatio + (1 - share) * air.heatCapacityRatio,
    viscosityPaS: gas.viscosityPaS,
  };
  return soundLevelDb(
    { massFlowKgPerS: total * molar, cdAM2, downstreamAbsPa: ATM_PA },
    mixed,
    temperatureK,
    ear,
  );
}

/** What a link leaves open now, m² effective: a relief only as far as it has lifted. */
export function openAreaM2(view: GasView, at: number): number {
  const link = view.network.links[at];
  if (link.law === 'relief') {
    return link.cdAM2 * liftShare(gaugeOf(view, link.from), link.setDropPa, link.fullDropPa);
  }
  if (link.law === 'orifice' || link.law === 'check') return link.cdAM2;
  return link.law === 'slot' ? link.perimeterM * link.gapM * link.cd : 0;
}

/** Loudest of some links, dB. */
function loudest(view: GasView, at: readonly number[]): number {
  let level = SILENCE_DB;
  for (const i of at) level = Math.max(level, levelOf(view, i));
  return level;
}

/** Bleed or vent at its end, dB. */
export function bleedLevelDb(view: GasView): number {
  return loudest(view, leadingOf(view.network).bleeds);
}

/** Gas blowing into the hole by anything but the bleed, dB. */
export function holeLevelDb(view: GasView): number {
  return loudest(view, leadingOf(view.network).blows);
}

export const streetDb = c.streetNoiseDb.value;

/** Openings that differ by less than this share are taken as the same: a fortieth of what a gauge tells in an hour. */
const ALIKE_SHARE = 1e-3;

/** True when two networks have the same cells and links and openings that hardly differ. */
export function alike(a: Network, b: Network): boolean {
  if (
    a.cells.length !== b.cells.length ||
    a.links.length !== b.links.length ||
    a.boundaries.length !== b.boundaries.length
  )
    return false;
  for (let i = 0; i < a.cells.length; i += 1) {
    if (a.cells[i].id !== b.cells[i].id || a.cells[i].volumeM3 !== b.cells[i].volumeM3) return false;
  }
  return (
    a.boundaries.every((place, i) => alikePlaces(place, b.boundaries[i])) &&
    a.links.every((link, i) => alikeLinks(link, b.links[i]))
  );
}

function alikePlaces(a: Boundary, b: Boundary): boolean {
  return (
    a.id === b.id &&
    a.pressureAbsPa === b.pressureAbsPa &&
    a.ramp?.ratePaPerS === b.ramp?.ratePaPerS &&
    a.ramp?.sinceS === b.ramp?.sinceS
  );
}

function alikeLinks(a: Network['links'][number], b: Network['links'][number]): boolean {
  if (a.id !== b.id || a.law !== b.law || a.from !== b.from || a.to !== b.to) return false;
  if (a.law === 'slot' && b.law === 'slot') return near(a.gapM, b.gapM) && near(a.lengthM, b.lengthM);
  if (a.law === 'orifice' && b.law === 'orifice') return near(a.cdAM2, b.cdAM2);
  if (a.law === 'relief' && b.law === 'relief') {
    return near(a.setDropPa, b.setDropPa) && near(a.fullDropPa, b.fullDropPa);
  }
  return a.law !== 'source' || b.law !== 'source' || a.molPerS === b.molPerS;
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= ALIKE_SHARE * Math.max(Math.abs(a), Math.abs(b));
}
