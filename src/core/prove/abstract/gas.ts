import { constants } from '../../catalogue/index.ts';
import { exactNozzlePsi } from '../../physics/index.ts';
import { layOut, move, stillAir, wouldMove, type RigState, type Sense } from '../../rig/index.ts';
import { ATM_PA, GAS_CONSTANT } from '../../units/index.ts';
import { keyOf } from './levels.ts';

/** Spaces of the rig in which gas can stand. */
export const spaces = ['barrel', 'chamber', 'above'] as const;
export type Space = (typeof spaces)[number];

/** Whether each space stands at the main's pressure (`true`) or at the street's: all the abstraction knows of gas. */
export interface Gas {
  readonly barrel: boolean;
  readonly chamber: boolean;
  readonly above: boolean;
  /** The main stands open to the hole or the street: gas blows. */
  readonly blowing: boolean;
}

/** A rig with the two levels its gas can have. */
export interface Stood {
  readonly rig: RigState;
  readonly gas: Gas;
}

/** What passes less than this joins nothing: a rig of a litre would take an hour to fill at 35 psig, m². */
const WEEP_CDA_M2 = 1e-8;
/** Gas blows from this size on, m²: some 0.7 g a minute at 35 psig. Finer leaks are the business of leak fluid. */
const BLOWS_CDA_M2 = 1e-7;

/** The gas as a hand meets it when it has come to rest: full pressure or none. */
export function senseAt({ rig, gas }: Stood): Sense {
  const mainPa = rig.site.mainIsolated ? 0 : rig.job.system.mainPressureGaugePa;
  return { ...stillAir, gaugePa: (cell) => (isSpace(cell) && gas[cell] ? mainPa : 0) };
}

function isSpace(cell: string): cell is Space {
  return cell === 'barrel' || cell === 'chamber' || cell === 'above';
}

/** Answers already worked out: gas at rest by the levels of the rig and of its gas before. */
export type Rested = Map<number, Gas>;

/** Lets gas come to rest, and whatever gas and weight move by themselves move, until nothing changes. */
export function rest(from: Stood, known?: Rested): Stood {
  // a rod nobody holds yet goes as the gas stood when its barrel came on, before a weep has filled it
  const early = wouldMove(from.rig, senseAt(from));
  let now = restGas(
    early === 'rodSinks' ? { ...from, rig: move(from.rig, early, senseAt(from)).rig } : from,
    known,
  );
  for (let times = 0; times < SETTLES; times += 1) {
    const sense = senseAt(now);
    const what = wouldMove(now.rig, sense);
    if (what === null) return now;
    now = restGas({ rig: move(now.rig, what, sense).rig, gas: now.gas }, known);
  }
  return now;
}

/** More than rod and stopper can do one after the other by themselves. */
const SETTLES = 8;

function restGas(from: Stood, known?: Rested): Stood {
  const key = known === undefined ? 0 : keyOf(from);
  const found = known?.get(key);
  if (found !== undefined) return { rig: from.rig, gas: found };
  // seals that lift under pressure are looked at again with the pressure they then have
  let gas = joined(from);
  for (let times = 0; times < SETTLES; times += 1) {
    const again = joined({ rig: from.rig, gas });
    if (same(again, gas)) break;
    // a saddle that lifts and sits again by turns hovers: live, and blowing
    gas = times < SETTLES / 2 ? again : either(again, gas);
  }
  known?.set(key, gas);
  return { rig: from.rig, gas };
}

function either(a: Gas, b: Gas): Gas {
  return {
    barrel: a.barrel || b.barrel,
    chamber: a.chamber || b.chamber,
    above: a.above || b.above,
    blowing: a.blowing || b.blowing,
  };
}

function same(a: Gas, b: Gas): boolean {
  return a.barrel === b.barrel && a.chamber === b.chamber && a.above === b.above && a.blowing === b.blowing;
}

type Link = ReturnType<typeof layOut>['links'][number];
type Place = Space | 'main' | 'outside';

/** A way between two places, by the area that would pass as much from the main to the street, m². */
interface Way {
  readonly from: Place;
  readonly to: Place;
  readonly areaM2: number;
}

/**
 * Where gas comes to rest. Flow through an opening goes with the difference of squared pressures, near enough to ask
 * on which side of half the main's pressure a space settles; one that is joined to neither main nor street keeps what
 * it has, and shares it with what it is joined to.
 */
function joined(from: Stood): Gas {
  const { rig } = from;
  const mainPa = rig.job.system.mainPressureGaugePa;
  const sense = senseAt(from);
  const { cells, links } = layOut(rig, sense);
  const there = spaces.filter((space) => cells.some((cell) => cell.id === space));
  const ways = waysOf(links, sense, ATM_PA + mainPa);
  if (mainPa <= 0 || rig.site.mainIsolated)
    return { barrel: false, chamber: false, above: false, blowing: false };
  const settled = settle(there, ways);
  const half = halfOf(mainPa);
  const level = (space: Space): boolean => {
    const share = settled.get(space);
    if (!there.includes(space)) return false;
    return share === undefined ? keeps(space, ways, from.gas) : share > half;
  };
  let outM2 = 0;
  for (const way of ways) {
    if (way.from === 'outside') outM2 += way.areaM2 * shareAt(way.to, settled);
    if (way.to === 'outside') outM2 += way.areaM2 * shareAt(way.from, settled);
  }
  return {
    barrel: level('barrel'),
    chamber: level('chamber'),
    above: level('above'),
    blowing: outM2 >= BLOWS_CDA_M2,
  };
}

/** Squared pressure at half the main's gauge pressure, as a share of the way from the street's to the main's. */
function halfOf(mainPa: number): number {
  const squared = (gaugePa: number): number => (ATM_PA + gaugePa) * (ATM_PA + gaugePa);
  return (squared(mainPa / 2) - squared(0)) / (squared(mainPa) - squared(0));
}

function waysOf(links: readonly Link[], sense: Sense, mainAbsPa: number): readonly Way[] {
  return links.flatMap((link): Way[] => {
    const [from, to] = [placeOf(link.from), placeOf(link.to)];
    const areaM2 = openM2(link, sense, mainAbsPa);
    return from === null || to === null || areaM2 < WEEP_CDA_M2 ? [] : [{ from, to, areaM2 }];
  });
}

/** The service line is dead behind its curb valve: it takes part only as what stands with the tee's barrel. */
function placeOf(cell: string): Place | null {
  if (cell === 'main') return cell;
  if (cell === 'hole' || cell === 'street') return 'outside';
  return isSpace(cell) ? cell : null;
}

/** Share of the main's squared pressure each space settles at; absent where neither main nor street reaches it. */
function settle(there: readonly Space[], ways: readonly Way[]): ReadonlyMap<Space, number> {
  const share = new Map<Space, number>();
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    for (const space of there) {
      let weight = 0;
      let sum = 0;
      for (const { from, to, areaM2 } of ways) {
        if (from !== space && to !== space) continue;
        const place = from === space ? to : from;
        const other = isSpace(place) ? share.get(place) : shareAt(place, share);
        if (other === undefined) continue;
        weight += areaM2;
        sum += areaM2 * other;
      }
      if (weight > 0) share.set(space, sum / weight);
    }
  }
  return share;
}

function shareAt(place: Place, settled: ReadonlyMap<Space, number>): number {
  if (place === 'main') return 1;
  return place === 'outside' ? 0 : (settled.get(place) ?? 0);
}

/** Enough for three spaces to be told from half (a Gauss–Seidel sweep each). */
const SWEEPS = 24;

function keeps(space: Space, ways: readonly Way[], gas: Gas): boolean {
  const group = new Set<Space>([space]);
  for (const one of group) {
    for (const { from, to } of ways) {
      if (from === one && isSpace(to)) group.add(to);
      if (to === one && isSpace(from)) group.add(from);
    }
  }
  return spaces.some((other) => group.has(other) && gas[other]);
}

/** Area of the nozzle that would pass as much as this link from the main to the street, m². */
function openM2(link: Link, sense: Sense, mainAbsPa: number): number {
  switch (link.law) {
    case 'orifice':
    case 'check':
      return link.cdAM2;
    case 'slot': {
      const cubeM3 = (link.perimeterM * link.gapM * link.gapM * link.gapM) / (24 * link.lengthM);
      const laminar =
        (cubeM3 * (mainAbsPa * mainAbsPa - ATM_PA * ATM_PA)) / (VISCOSITY_PA_S * MOLAR_J_PER_MOL);
      const laminarM2 = (laminar * Math.sqrt(MOLAR_KG_PER_MOL * MOLAR_J_PER_MOL)) / (CHOKED_PSI * mainAbsPa);
      const nozzleM2 = link.cd * link.perimeterM * link.gapM;
      const ratio = laminarM2 / nozzleM2;
      return laminarM2 / Math.sqrt(1 + ratio * ratio);
    }
    case 'relief':
      return sense.gaugePa(link.from) > link.setDropPa ? link.cdAM2 : 0;
    default:
      return 0;
  }
}

const VISCOSITY_PA_S = constants.gasViscosityPaS.value;
const MOLAR_KG_PER_MOL = constants.gasMolarMassKgPerMol.value;
/** R·T at 15 °C, J/mol: levels do not turn on a few degrees. */
const MOLAR_J_PER_MOL = GAS_CONSTANT * 288.15;
/** Choked flow function of the gas: m = CdA·p·√(M/RT)·Ψ. */
const CHOKED_PSI = exactNozzlePsi(constants.gasHeatCapacityRatio.value, 0);
