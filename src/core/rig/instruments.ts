import { constants } from '../catalogue/index.ts';
import { ATM_PA, exp, hashNoise, psi } from '../units/index.ts';
import type { GaugeName, Measure } from './actions.ts';
import type { ProofConditions } from './facts.ts';
import { houseCell, testedGaugePa } from './line.ts';
import { mainGaugePa } from './mainFeed.ts';
import { hasValve, topPiece } from './network.ts';
import { elevations, standingGeometry, tipLengthM } from './reach.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';
import { troubleSize } from './troubles.ts';

const c = constants;

/** Half the class error of a sound gauge is used up at most, so that two sound gauges agree within a division. */
const CLASS_SHARE = 0.4;
/** Largest zero error of a gauge nobody zeroed, Pa (assumed). */
const ZERO_ERROR_PA = psi(2);

/**
 * What a gauge shows, Pa gauge, beside the truth; null for the head gauge while no test head
 * is on, and for the manometer while nothing with a bleed is. A pure function
 * of rig, seed and truth: class error is one number a gauge, and the eye reads to a quarter division.
 */
export function gaugeReading(
  rig: RigState,
  gauge: GaugeName,
  sense: Sense,
): { readingGaugePa: number; trueGaugePa: number } | null {
  if (gauge === 'manometer') return manometerReading(rig, sense);
  const head = rig.stack.find((p) => p.kind === 'testHead');
  if (gauge === 'head' && head === undefined) return null;
  if (gauge === 'test' && rig.testSet.on === null) return null;
  const trueGaugePa =
    gauge === 'head'
      ? sense.gaugePa('above')
      : gauge === 'test'
        ? testedGaugePa(rig, sense)
        : mainGaugePa(rig, sense);
  const defects = gauge === 'head' && head !== undefined ? rig.kit[head.id].defects : {};
  const rangePa = gaugeRangePa(rig, gauge);
  const classError =
    hashNoise(sense.seed, `gauge:${gauge}`, 0) * CLASS_SHARE * c.gaugeClassFraction.value * rangePa;
  const zero = rig.site.zeroed[gauge] ? 0 : hashNoise(sense.seed, `zero:${gauge}`, 0) * ZERO_ERROR_PA;
  const span = Math.min(1, trueGaugePa / psi(10));
  const shown =
    defects.gaugeStuckPa ??
    trueGaugePa +
      (classError + (gauge === 'head' ? driftPa(rig, trueGaugePa, sense.atS) : 0)) * Math.max(0, span) +
      zero +
      (defects.gaugeOffsetPa ?? 0);
  const stepPa = (c.gaugeReadPa.value * rangePa) / c.gaugeRangePa.value;
  return { readingGaugePa: Math.max(0, stepped(shown, stepPa)), trueGaugePa };
}

/** Range on the dial of a gauge, Pa. */
export function gaugeRangePa(rig: RigState, gauge: GaugeName): number {
  const unfit = gauge === 'main' ? troubleSize(rig, 'gaugeUnfit') : 0;
  return unfit > 0 ? unfit : c.gaugeRangePa.value;
}

/** Time in which sun or cold goes through the steel of the chamber, s (assumed). */
const DRIFT_S = 900;

/** What a change of the shut-in air's temperature adds to the reading, Pa: the gas law at constant volume. */
function driftPa(rig: RigState, gaugePa: number, atS: number): number {
  const kelvin = troubleSize(rig, 'drift');
  if (kelvin === 0) return 0;
  const since = Math.max(0, atS - (rig.job.troubles?.find((one) => one.what === 'drift')?.sinceS ?? 0));
  const warmer = kelvin * (1 - exp(-since / DRIFT_S));
  return ((ATM_PA + gaugePa) * warmer) / rig.job.system.temperatureK;
}

/**
 * A water column on the bleed, which tells what no dial does on a main under 10 psig. Its zero is where the water stands;
 * past its range the water is blown out and it shows no more than that.
 */
function manometerReading(
  rig: RigState,
  sense: Sense,
): { readingGaugePa: number; trueGaugePa: number } | null {
  const top = topPiece(rig);
  if (top === null || rig.kit[top].kind === 'valveCap') return null;
  const trueGaugePa = sense.gaugePa('above');
  const shown = stepped(Math.min(trueGaugePa, c.manometerRangePa.value), c.manometerReadPa.value);
  return { readingGaugePa: Math.max(0, shown), trueGaugePa };
}

function stepped(value: number, step: number): number {
  return Math.floor(value / step + 0.5) * step;
}

/** Pipe thermometer: read to half a degree, off by as much at most, K (assumed). */
const THERMOMETER_STEP_K = 0.5;

/** What a thermometer laid on the line shows, K, beside the truth. */
export function temperatureReading(rig: RigState, sense: Sense): { readingK: number; trueK: number } {
  const trueK = rig.job.system.temperatureK;
  const off = (hashNoise(sense.seed, 'thermometer', 0) * THERMOMETER_STEP_K) / 2;
  return { readingK: stepped(trueK + off, THERMOMETER_STEP_K), trueK };
}

/** The gas instrument at the riser moves in whole per cents of gas. */
const GAS_STEP = 0.01;

/** Share of gas in what leaves the riser, as its instrument shows it, beside the truth. */
export function riserReading(rig: RigState, sense: Sense): { gasShare: number; trueGasShare: number } {
  const trueGasShare = sense.gasFraction(houseCell(rig.job));
  return { gasShare: stepped(trueGasShare, GAS_STEP), trueGasShare };
}

/** How the assembly stands, for what a gauge reading is evidence of. */
export function proofConditions(rig: RigState): ProofConditions {
  return {
    valveOpenRad: hasValve(rig) ? rig.valve.openRad : 0,
    ventOpen: rig.testHead.ventOpen,
    bleedOpenRad: rig.bleed.openRad,
    top: topPiece(rig),
    saddleOn: rig.saddle.on,
  };
}

/** A steel rule is read to half a millimetre (assumed). */
const RULE_STEP_M = 0.0005;
/** How far off a hand holds it (assumed). */
const RULE_ERROR_M = 0.0006;

/**
 * What a rule gives, m, beside the truth; null where there is nothing to lay it on yet. Stack height is from the
 * tip's lower end, rod fully up, down to the saddle's seat face, so that the four add up to the travel.
 */
export function measureReading(
  rig: RigState,
  what: Measure,
  sense: Sense,
): { readingM: number; trueM: number } | null {
  const trueM = trueMeasureM(rig, what);
  if (trueM === null) return null;
  const off = hashNoise(sense.seed, `rule:${what}`, Math.floor(sense.atS)) * RULE_ERROR_M;
  return { readingM: stepped(trueM + off, RULE_STEP_M), trueM };
}

function trueMeasureM(rig: RigState, what: Measure): number | null {
  const geometry = standingGeometry(rig);
  const stands = elevations(rig);
  switch (what) {
    case 'stackHeight': {
      if (stands === null) return null;
      const barrel = rig.stack.some((p) => p.kind === 'rodBarrel') ? stands : withBarrel(rig);
      return barrel === null || barrel.rodUpZM === null ? null : barrel.rodUpZM - stands.saddleSeatZM;
    }
    case 'seatToBoss':
      return stands === null || rig.saddle.on !== 'tee' ? null : stands.saddleSeatZM - geometry.bossZM;
    case 'bossToPort':
      return geometry.bossZM - geometry.portUndersideZM;
    case 'tipOffset':
      return rig.rod.tip === null ? null : tipLengthM(rig);
  }
}

/** The stack as it will be once the barrel stands on it: what a crew adds up before it goes on. */
function withBarrel(rig: RigState) {
  if (topPiece(rig) !== null || !hasValve(rig)) return null;
  return elevations({ ...rig, stack: [...rig.stack, { id: '', kind: 'rodBarrel', jointNm: 0 }] });
}

/** Oxygen as the instrument shows it, to a tenth of a per cent. */
export function oxygenShown(share: number): number {
  return stepped(share, 0.001);
}

/** The detector's display moves in whole per cents of the limit. */
export function shownLel(share: number): number {
  return stepped(share, c.detectorStepLel.value);
}
