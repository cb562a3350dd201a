import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import {
  advanceDetector,
  advanceExcavation,
  ballValveAreaM2,
  ballValveOpening,
  CLEAN_DETECTOR,
  compile,
  densityKgPerM3,
  detectorCrossingS,
  driftPaPerK,
  type Ear,
  type ExcavationBox,
  excavationGasMol,
  isAudible,
  jetReachM,
  linkFlows,
  notionalDiameterM,
  oxygenFraction,
  readDetector,
  type Rod,
  rodHoldN,
  rodVerdict,
  sharedGaugePa,
  SILENCE_DB,
  addLevelsDb,
  soundLevelDb,
  thrownSpeedMPerS,
} from '../../src/core/physics/index.ts';
import { ATM_PA, psi } from '../../src/core/units/index.ts';
import { abs, filled, fuelGas, MM2, SITE_K, vessel } from './vessels.ts';

const c = constants;
const hole: ExcavationBox = {
  volumeM3: c.holeVolumeM3.value,
  gasFraction: 0,
  freshAirM3PerS: c.holeAirLightM3PerS.value,
  mixingFactor: 1,
  temperatureK: SITE_K,
  pressureAbsPa: ATM_PA,
};

describe('the air of the hole', () => {
  const inflow = { airMol: 0.02, gasMol: 0.3 };

  it('is the same however a steady inflow is cut in time', () => {
    const once = advanceExcavation(hole, inflow, 60);
    let box = hole;
    let left = 0;
    for (let i = 0; i < 60; i += 1) {
      const step = advanceExcavation(box, { airMol: inflow.airMol / 60, gasMol: inflow.gasMol / 60 }, 1);
      box = step.box;
      left += step.gasLeftMol;
    }
    expect(box.gasFraction).toBeCloseTo(once.box.gasFraction, 14);
    expect(left).toBeCloseTo(once.gasLeftMol, 12);
  });

  it('keeps account of every mole of gas', () => {
    const step = advanceExcavation({ ...hole, gasFraction: 0.01 }, inflow, 60);
    const before = excavationGasMol({ ...hole, gasFraction: 0.01 });
    expect(before + inflow.gasMol - step.gasLeftMol).toBeCloseTo(excavationGasMol(step.box), 11);
  });

  it('never holds more gas than air can be displaced, and loses oxygen as gas comes', () => {
    const flooded = advanceExcavation(hole, { airMol: 0, gasMol: 1e6 }, 10).box;
    expect(flooded.gasFraction).toBeLessThanOrEqual(1);
    expect(oxygenFraction(0.5, 0.209)).toBeCloseTo(0.1045, 6);
  });
});

describe('the gas detector', () => {
  it('reaches 63 % of a steady gas in one time constant and shows whole per cents', () => {
    const after = advanceDetector(CLEAN_DETECTOR, 0.5, 8, 8);
    expect(after.sensedLel).toBeCloseTo(0.5 * 0.632121, 6);
    expect(readDetector(after, 0.01)).toBeCloseTo(0.32, 12);
  });

  it('latches over range and stays so when the air is clean again', () => {
    const over = advanceDetector(CLEAN_DETECTOR, 3, 8, 8);
    const later = advanceDetector(over, 0, 600, 8);
    expect(over.overRange).toBe(true);
    expect(readDetector(later, 0.01)).toBeNull();
  });

  it('passes a threshold exactly when it says it will', () => {
    const at = detectorCrossingS(CLEAN_DETECTOR, 0.5, 0.1, 8);
    expect(at).not.toBeNull();
    expect(advanceDetector(CLEAN_DETECTOR, 0.5, at ?? 0, 8).sensedLel).toBeCloseTo(0.1, 12);
    expect(detectorCrossingS(CLEAN_DETECTOR, 0.05, 0.1, 8)).toBeNull();
    expect(detectorCrossingS({ sensedLel: 0.3, overRange: false }, 0, 0.1, 8)).toBeGreaterThan(0);
  });
});

describe('what the ear gets', () => {
  const ear: Ear = {
    distanceM: c.earDistanceM.value,
    efficiency: c.acousticEfficiency.value,
    strouhal: c.jetStrouhal.value,
    bandHz: c.earBandHz.value,
  };
  const levelDb = (cdAM2: number, psig: number): number => {
    const network = vessel(1e-3, [{ id: 'hole', between: 'vessel-air', law: 'orifice', cdAM2 }]);
    const flow = linkFlows(compile(network), filled(network, [psig], [1]))[0];
    const massFlowKgPerS = flow.gasMolPerS * fuelGas.molarMassKgPerMol;
    return soundLevelDb({ massFlowKgPerS, cdAM2, downstreamAbsPa: ATM_PA }, fuelGas, SITE_K, ear);
  };
  const heard = (cdAMm2: number, psig: number): boolean =>
    isAudible(levelDb(cdAMm2 * MM2, psig), c.streetNoiseDb.value);

  it('is a clear puff from the bleed at 1.2 psig and a roar at 35', () => {
    expect(heard(4.95, 1.2)).toBe(true);
    expect(levelDb(4.95 * MM2, 35)).toBeGreaterThan(80);
  });

  it('is nothing from a weep at 35 psig, nor from the open bleed at a few tenths of a psi', () => {
    expect(heard(0.01, 35)).toBe(false);
    expect(heard(4.95, 0.3)).toBe(false);
    expect(heard(4.95, 0.5)).toBe(false);
    expect(levelDb(4.95 * MM2, 0)).toBe(SILENCE_DB);
  });

  it('grows with the eighth power of speed while the drop is small: 12 dB a doubling of pressure', () => {
    expect(levelDb(4.95 * MM2, 0.6) - levelDb(4.95 * MM2, 0.3)).toBeCloseTo(12, 0);
  });

  it('adds two alike to 3 dB more', () => {
    expect(addLevelsDb([60, 60])).toBeCloseTo(63.01, 2);
    expect(addLevelsDb([])).toBe(SILENCE_DB);
  });
});

describe('the free rod', () => {
  const rod: Rod = {
    areaM2: c.rodAreaM2.value,
    massKg: c.rodMassKg.value,
    glandFrictionN: c.glandFrictionN.value,
  };

  it.each([
    [60, 'thrown'],
    [35, 'thrown'],
    [15, 'still'],
    [8.1, 'still'],
    [7.5, 'sinks'],
    [0, 'sinks'],
  ])('at %s psig is %s', (psig, verdict) => {
    expect(rodVerdict(rod, psi(psig))).toBe(verdict);
  });

  it('needs a hand of 72 N at 60 psig and none at 15', () => {
    expect(rodHoldN(rod, psi(60))).toBeCloseTo(psi(60) * 2.85e-4 - 3.1 * 9.80665 - 15, 6);
    expect(rodHoldN(rod, psi(60))).toBeCloseTo(72.5, 0);
    expect(rodHoldN(rod, psi(15))).toBe(0);
    expect(rodHoldN(rod, 0)).toBeLessThan(0);
  });

  it('leaves its stroke at some 5 m/s when thrown at 60 psig', () => {
    expect(thrownSpeedMPerS(72.5, 0.45, 3.1)).toBeCloseTo(4.59, 2);
    expect(thrownSpeedMPerS(-1, 0.45, 3.1)).toBe(0);
  });
});

describe('a quarter-turn valve', () => {
  const bore = 0.0762;
  const ball = 0.118;
  const degree = Math.PI / 180;

  it('passes its whole bore open, nothing from the angle at which the port has left the seat', () => {
    expect(ballValveAreaM2(bore, ball, 0)).toBeCloseTo((Math.PI * bore * bore) / 4, 12);
    const shut = 2 * Math.asin(bore / ball);
    expect(ballValveOpening(bore, ball, shut - 0.01)).toBeGreaterThan(0);
    expect(ballValveOpening(bore, ball, shut + 0.001)).toBe(0);
    expect(ballValveOpening(bore, ball, Math.PI / 2)).toBe(0);
  });

  it('closes steadily', () => {
    let before = 1.0001;
    for (let angle = 0; angle <= 90; angle += 2) {
      const now = ballValveOpening(bore, ball, angle * degree);
      expect(now).toBeLessThanOrEqual(before);
      before = now;
    }
  });
});

describe('jets, drift and sharing', () => {
  it('a jet of gas from a 3 mm hole is flammable to 0.4 m', () => {
    const ratio =
      densityKgPerM3({ ...fuelGas, molarMassKgPerMol: 0.0289647 }, ATM_PA, SITE_K) /
      densityKgPerM3(fuelGas, ATM_PA, SITE_K);
    expect(ratio).toBeCloseTo(1 / 0.6, 4);
    expect(jetReachM(3e-3, ratio, 0.05)).toBeCloseTo(0.387, 3);
    expect(notionalDiameterM(3e-3, 0.5457 * abs(35), ATM_PA)).toBeGreaterThan(3e-3);
    expect(notionalDiameterM(3e-3, 90000, ATM_PA)).toBe(3e-3);
  });

  it('a held pressure drifts 0.172 psi/K at 35 psig and 0.259 at 60; 5 K of warm air is 0.86 psi', () => {
    expect(driftPaPerK(abs(35), SITE_K) / psi(1)).toBeCloseTo(0.172, 3);
    expect(driftPaPerK(abs(60), SITE_K) / psi(1)).toBeCloseTo(0.259, 3);
    expect((5 * driftPaPerK(abs(35), SITE_K)) / psi(1)).toBeCloseTo(0.86, 2);
  });

  it('the seat test comes back to p(V − Va)/V', () => {
    expect(sharedGaugePa(psi(35), 1.01e-3, 0.31e-3) / psi(1)).toBeCloseTo((35 * 1.01) / 1.32, 9);
  });
});
