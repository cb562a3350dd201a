import { describe, expect, it } from 'vitest';
import { compile, densityKgPerM3, linkFlows } from '../../src/core/physics/index.ts';
import { ATM_PA, CUBIC_FOOT_M3, INCH_M, psi } from '../../src/core/units/index.ts';
import { air, filled, fuelGas, SITE_K, vessel } from '../physics/vessels.ts';

/*
 * Source: computed with `fluids` 1.0.22: natural gas of gravity 0.60, k 1.30, Cd 0.61, 60 °F, cubic feet an hour at
 * 14.73 psia.
 * Tolerance 0.1 % (the smooth band takes 0.09 % at a quarter psi) and half the last printed figure.
 */
function cfh(inches: number, psig: number): number {
  const d = inches * INCH_M;
  const network = vessel(1, [
    { id: 'h', between: 'vessel-air', law: 'orifice', cdAM2: (0.61 * Math.PI * d * d) / 4 },
  ]);
  const flow = linkFlows(compile(network), filled(network, [psig], [1]))[0];
  const perS = (flow.gasMolPerS * fuelGas.molarMassKgPerMol) / densityKgPerM3(fuelGas, psi(14.73), SITE_K);
  return (perS / CUBIC_FOOT_M3) * 3600;
}

describe('natural gas through an opening', () => {
  it.each([
    [0.25, 0.25, 167.8],
    [0.25, 5, 733.2],
    [0.25, 15, 1227.9],
    [0.25, 30, 1848.1],
    [0.25, 60, 3088.5],
    [0.824, 60, 33552],
    [1.049, 60, 54378],
    [1.38, 60, 94108],
  ])('of %s in at %s psig passes %s cubic feet an hour', (inches, psig, printed) => {
    const lastFigure = printed < 10000 ? 0.1 : 1;
    expect(Math.abs(cfh(inches, psig) - printed)).toBeLessThan(1e-3 * printed + lastFigure / 2);
  });

  it('scales with the square of diameter and, choked, with absolute pressure', () => {
    expect(cfh(0.5, 30) / cfh(0.25, 30)).toBeCloseTo(4, 9);
    expect(cfh(0.25, 60) / cfh(0.25, 30)).toBeCloseTo(74.696 / 44.696, 4);
  });
});

describe('ideal densities and speeds of sound', () => {
  // Source: P·M/(R·T) and √(k·R·T/M), plain arithmetic; methane 16.0425 g/mol (ISO 6976, from memory).
  it('at 15 °C and one atmosphere: methane 0.6785, gas of gravity 0.60 0.7350, air 1.2250 kg/m³', () => {
    const methane = { ...fuelGas, molarMassKgPerMol: 0.0160425 };
    expect(densityKgPerM3(methane, ATM_PA, 288.15)).toBeCloseTo(0.6785, 4);
    expect(densityKgPerM3(fuelGas, ATM_PA, 288.15)).toBeCloseTo(0.735, 4);
    expect(densityKgPerM3(air, ATM_PA, 288.15)).toBeCloseTo(1.225, 4);
  });

  it('at 60 °F: air 340.6 m/s, gas of gravity 0.60 423.7 m/s', () => {
    const speed = (gas: typeof air): number =>
      Math.sqrt((gas.heatCapacityRatio * 8.314463 * SITE_K) / gas.molarMassKgPerMol);
    expect(Math.abs(speed(air) - 340.6)).toBeLessThan(0.1);
    expect(Math.abs(speed(fuelGas) - 423.7)).toBeLessThan(0.1);
  });

  it('a thousand standard cubic feet of methane is 19.18 kg, 0.572 t of carbon dioxide at 29.8', () => {
    // 60 °F and 14.7 psia, 40 CFR 98.233 from memory; the density follows from the ideal gas.
    const kg =
      1000 * CUBIC_FOOT_M3 * densityKgPerM3({ ...fuelGas, molarMassKgPerMol: 0.0160425 }, psi(14.7), SITE_K);
    expect(Math.abs(kg - 19.18)).toBeLessThan(0.01);
    expect((kg * 29.8) / 1000).toBeCloseTo(0.572, 3);
  });
});
