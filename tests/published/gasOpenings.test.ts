import { describe, expect, it } from 'vitest';
import { compile, densityKgPerM3, linkFlows } from '../../src/core/physics/index.ts';
import { ATM_PA, CUBIC_FOOT_M3, INCH_M, psi } from '../../src/core/units/index.ts';
import { air, filled, fuelGas, SITE_K, vessel } from '../physics/vessels.ts';
import { comparing } from './compare.ts';

/*
 * Source: computed with `fluids` 1.0.22: natural gas of gravity 0.60, k 1.30, Cd 0.61, 60 °F, cubic feet an hour at
 * 14.73 psia.
 * Tolerance 0.1 % (the smooth band takes 0.09 % at a quarter psi) and half the last printed figure.
 */
const flows = comparing(
  'Isentropic nozzle by fluids 1.0.22',
  'gas of gravity 0.60, Cd 0.61, 60 °F',
  'computed',
  'cfh',
);
const densities = comparing('Ideal gas', '15 °C and one atmosphere', 'arithmetic', 'kg/m³');
const speeds = comparing('Ideal gas', 'speed of sound, 60 °F', 'arithmetic', 'm/s');
const masses = comparing('40 CFR 98.233', 'a thousand standard cubic feet of methane', 'memory', 'kg, t');

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
    flows(`${inches} in at ${psig} psig`, cfh(inches, psig), printed, {
      share: 1e-3,
      absolute: lastFigure / 2,
    });
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
    densities('methane', densityKgPerM3(methane, ATM_PA, 288.15), 0.6785, { absolute: 5e-5 });
    densities('gas of gravity 0.60', densityKgPerM3(fuelGas, ATM_PA, 288.15), 0.735, { absolute: 5e-5 });
    densities('air', densityKgPerM3(air, ATM_PA, 288.15), 1.225, { absolute: 5e-5 });
  });

  it('at 60 °F: air 340.6 m/s, gas of gravity 0.60 423.7 m/s', () => {
    const speed = (gas: typeof air): number =>
      Math.sqrt((gas.heatCapacityRatio * 8.314463 * SITE_K) / gas.molarMassKgPerMol);
    speeds('air', speed(air), 340.6, { absolute: 0.1 });
    speeds('gas of gravity 0.60', speed(fuelGas), 423.7, { absolute: 0.1 });
  });

  it('a standard cubic foot of gas of gravity 0.60 is 0.020778 kg at 14.7 psia and 0.020821 at 14.73', () => {
    // Plain arithmetic from the ideal gas at 60 °F.
    const kg = (psia: number): number => CUBIC_FOOT_M3 * densityKgPerM3(fuelGas, psi(psia), SITE_K);
    masses('one cubic foot at 14.7 psia, kg', kg(14.7), 0.020778, { absolute: 6e-7 });
    masses('one cubic foot at 14.73 psia, kg', kg(14.73), 0.020821, { absolute: 6e-7 });
  });

  it('a thousand standard cubic feet of methane is 19.18 kg, 0.572 t of carbon dioxide at 29.8', () => {
    // 60 °F and 14.7 psia, 40 CFR 98.233 from memory; the density follows from the ideal gas.
    const kg =
      1000 * CUBIC_FOOT_M3 * densityKgPerM3({ ...fuelGas, molarMassKgPerMol: 0.0160425 }, psi(14.7), SITE_K);
    masses('mass, kg', kg, 19.18, { absolute: 0.01 });
    masses('carbon dioxide of the same warming at 29.8, t', (kg * 29.8) / 1000, 0.572, { absolute: 5e-4 });
  });
});
