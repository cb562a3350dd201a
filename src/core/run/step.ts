import { constants } from '../catalogue/index.ts';
import { densityKgPerM3, isAudible, jetReachM, naturalStep, stepTo, type Step } from '../physics/index.ts';
import { hoseDrawnBack, lifted, wouldMove, type Spontaneous } from '../rig/index.ts';
import { ATM_PA, GAS_CONSTANT } from '../units/index.ts';
import { advanceAir, alarmFor, FAINT_S, type IntoHole } from './air.ts';
import { bleedLevelDb, gaugeOf, openAreaM2, placeOf, ready, streetDb, viewGas, type GasView } from './gas.ts';
import { leadingOf } from './places.ts';
import { senseOf } from './sense.ts';
import type { HoleAir, RunState } from './types.ts';

const c = constants;

/** What crosses a threshold, in the order it is looked at. */
export type Crossing =
  | { readonly kind: 'moves'; readonly what: Spontaneous }
  | { readonly kind: 'alarm'; readonly step: 0 | 1 | 2 }
  | { readonly kind: 'faints' }
  | { readonly kind: 'quiet' }
  | { readonly kind: 'hiss' }
  | { readonly kind: 'relief'; readonly lifted: boolean }
  | { readonly kind: 'saddle'; readonly lifted: boolean }
  | { readonly kind: 'blow'; readonly from: string | null; readonly kgPerS: number }
  | { readonly kind: 'flammable'; readonly nearReachM: number };

/** The next natural step of a run, worked out but not yet taken. A pure function of the run without its clock. */
export interface Pending {
  readonly step: Step;
  readonly view: GasView;
  readonly air: HoleAir;
  readonly into: IntoHole;
  readonly crossing: Crossing | null;
}

/** Times nearer than this are one, s. */
export const SNAP_S = 1e-6;
/** Event times are found to a millisecond. */
const LOCATED_S = 1e-3;
/** Mass flow into the hole from which it counts as blowing, and below which it has ceased, kg/s. */
const BLOW_KG_PER_S = 2e-4;
const BLOW_OVER_KG_PER_S = 1e-4;

/** A step of given end with the hole's air, and no look at what it crosses. */
function takeStep(run: RunState, step: Step): Pending {
  const durationS = step.endS - run.gas.atS;
  const into = intoHole(run, step);
  const air = advanceAir(run.air, run.rig, into, durationS);
  const view = viewGas(run.network, step.contents, step.endS);
  return { step, view, air, into, crossing: null };
}

/** The same with what it crosses. */
function tryStep(run: RunState, step: Step): Pending {
  const taken = takeStep(run, step);
  return { ...taken, crossing: crossingOf(run, taken.view, taken.air, step.endS) };
}

/** Works out the next natural step; where it crosses something, it is cut there to the millisecond. */
export function pend(run: RunState): Pending {
  const net = ready(run.network);
  const room = run.markS - run.gas.atS;
  const step = naturalStep(net, run.gas.atS, run.gas, run.gas.stepS, room);
  // a step up to the mark ends on the mark, to the last bit
  const first = tryStep(run, Math.abs(step.endS - run.markS) < SNAP_S ? { ...step, endS: run.markS } : step);
  if (first.crossing === null) return first;
  let lowS = run.gas.atS;
  let high = first;
  while (high.step.endS - lowS > LOCATED_S) {
    const middleS = (lowS + high.step.endS) / 2;
    const tried = tryStep(run, stepTo(net, run.gas.atS, run.gas, run.gas.stepS, middleS));
    if (tried.crossing === null) lowS = middleS;
    else high = tried;
  }
  return high;
}

/** A step cut at a given time, for an action to be done there. No threshold lies before it. */
export function cutAt(run: RunState, atS: number): Pending {
  const net = ready(run.network);
  return takeStep(run, stepTo(net, run.gas.atS, run.gas, run.gas.stepS, atS));
}

/** Gas and air that reached the hole in a step: by leaks, and drawn back from the hose. */
function intoHole(run: RunState, step: Step): IntoHole {
  let airMol = 0;
  let gasMol = 0;
  for (const i of leadingOf(run.network).out) {
    const share = run.network.links[i].to === 'hole' ? 1 : hoseDrawnBack(run.rig);
    if (share === 0) continue;
    airMol += share * Math.max(0, step.linkAirMol[i]);
    gasMol += share * Math.max(0, step.linkGasMol[i]);
  }
  return { airMol, gasMol };
}

/** Above the flow function of any gas at choking (0.69 for k = 1.4). */
const CHOKED_SHARE = 0.75;

/**
 * Whether anything could blow into the hole as hard as to be told of, by its opening and the pressure before it alone:
 * on a quiet rig no flow need be worked out.
 */
function mayBlow(view: GasView): boolean {
  const { links, gas, air, temperatureK } = view.network;
  const lightest = Math.min(gas.molarMassKgPerMol, air.molarMassKgPerMol);
  const kgPerS = (CHOKED_SHARE * gas.molarMassKgPerMol) / Math.sqrt(lightest * GAS_CONSTANT * temperatureK);
  for (const i of leadingOf(view.network).blows) {
    const link = links[i];
    const mostKgPerS = openAreaM2(view, i) * mostBeforePa(view, link.from) * kgPerS;
    if (link.law === 'pipe' || mostKgPerS >= BLOW_KG_PER_S) return true;
  }
  return false;
}

/** Pressure of a place, Pa absolute; of one that moves by itself no more than that it may be anything. */
function mostBeforePa({ network, gaugePa }: GasView, place: string): number {
  const cell = placeOf(network, place);
  if (cell >= 0) return ATM_PA + gaugePa[cell];
  for (const { id, pressureAbsPa, ramp } of network.boundaries)
    if (id === place) return ramp === undefined ? pressureAbsPa : Infinity;
  return Infinity;
}

const NO_BLOW = { from: '', kgPerS: 0, cdAM2: 0 };

/** Strongest flow into the hole that is not a bleed. */
function strongestBlow(view: GasView): { from: string; kgPerS: number; cdAM2: number } {
  let best = { from: '', kgPerS: 0, cdAM2: 0 };
  for (const i of leadingOf(view.network).blows) {
    const kgPerS = view.flows.gasMolPerS[i] * view.network.gas.molarMassKgPerMol;
    if (kgPerS > best.kgPerS) best = { from: view.network.links[i].id, kgPerS, cdAM2: openAreaM2(view, i) };
  }
  return best;
}

/** First threshold, in a fixed order, that this state lies beyond while the run does not know it yet. */
export function crossingOf(run: RunState, view: GasView, air: HoleAir, atS: number): Crossing | null {
  const what = wouldMove(run.rig, senseOf(run, view, atS, air));
  if (what !== null) return { kind: 'moves', what };
  const step = alarmFor(air, run.rig.job);
  if (step !== run.air.alarm) return { kind: 'alarm', step };
  if (air.lowOxygenS >= FAINT_S) return { kind: 'faints' };
  const level = bleedLevelDb(view);
  if (run.ear.hissSinceS !== null && !isAudible(level, streetDb)) return { kind: 'quiet' };
  if (run.ear.hissSinceS === null && isAudible(level, streetDb)) return { kind: 'hiss' };
  const reliefOpen = gaugeOf(view, 'above') > c.reliefLiftGaugePa.value && leadingOf(run.network).relief;
  if (reliefOpen !== run.ear.reliefLifted) return { kind: 'relief', lifted: reliefOpen };
  const up = lifted(run.rig, gaugeOf(view, 'chamber'));
  if (up !== run.ear.saddleLifted) return { kind: 'saddle', lifted: up };
  return blowOrFire(run, view, air);
}

function blowOrFire(run: RunState, view: GasView, air: HoleAir): Crossing | null {
  const blow = run.ear.blowing === null && !mayBlow(view) ? NO_BLOW : strongestBlow(view);
  if (run.ear.blowing === null && blow.kgPerS >= BLOW_KG_PER_S) return { kind: 'blow', ...blow };
  if (run.ear.blowing !== null && blow.kgPerS < BLOW_OVER_KG_PER_S)
    return { kind: 'blow', from: null, kgPerS: 0 };
  if (run.ear.flammable) return null;
  const reach = nearReachM(view, blow.cdAM2, blow.kgPerS, run.scenario.job.site.lelFraction);
  const share = air.gasFraction / run.scenario.job.site.lelFraction;
  return share >= 1 || reach >= NEAR_REACH_M ? { kind: 'flammable', nearReachM: reach } : null;
}

/** A jet that can burn this far from its opening fills the place where a crew kneels, m (assumed). */
const NEAR_REACH_M = 1;

function nearReachM(view: GasView, cdAM2: number, kgPerS: number, lelFraction: number): number {
  if (cdAM2 <= 0 || kgPerS < BLOW_KG_PER_S) return 0;
  const { gas, air, temperatureK } = view.network;
  const lighter = densityKgPerM3(air, ATM_PA, temperatureK) / densityKgPerM3(gas, ATM_PA, temperatureK);
  return jetReachM(Math.sqrt((4 * cdAM2) / Math.PI), lighter, lelFraction, c.jetReachFactor.value);
}
