import { describe, expect, it } from 'vitest';
import { adiabaticBlowdownS, compile, criticalRatio, linkFlows } from '../../src/core/physics/index.ts';
import { ATM_PA, GAS_CONSTANT, INCH_M, psi, PSI_PA } from '../../src/core/units/index.ts';
import { filled, fuelGas, psigAfter, SITE_K, timeToPsig, vessel } from '../physics/vessels.ts';
import { comparing } from './compare.ts';

/*
 * Source: closed form of a vessel emptying through a choked opening (textbook form *from memory*; its algebra was
 * checked against a Runge-Kutta integration to 1e-6). tau = m0/flow0; isothermal p = p0·exp(−t/tau); adiabatic
 * p = p0·(1 + (k − 1)/2·t/tau)^(−2k/(k − 1)). 0.1 m³, 1/4 in, Cd 0.61, 60 psig, k 1.3.
 */
const seconds = comparing(
  'Closed form of a blow-down',
  'vessel of 0.1 m³ through 1/4 in from 60 psig',
  'memory',
  's',
);
const pressures = comparing('Closed form of a blow-down', 'isothermal pressure', 'memory', 'Pa');
const d = 0.25 * INCH_M;
const network = vessel(0.1, [
  { id: 'hole', between: 'vessel-air', law: 'orifice', cdAM2: (0.61 * Math.PI * d * d) / 4 },
]);
const start = filled(network, [60], [1]);
const p0 = ATM_PA + psi(60);
const endPsig = (ATM_PA / criticalRatio(1.3) - ATM_PA) / PSI_PA;
const m0 = (p0 * 0.1 * fuelGas.molarMassKgPerMol) / (GAS_CONSTANT * SITE_K);
const tau = m0 / (linkFlows(compile(network), start)[0].gasMolPerS * fuelGas.molarMassKgPerMol);

describe('a vessel blown down through a choked hole', () => {
  it('starts with tau 20.874 s, within 0.01 %', () => {
    seconds('time constant', tau, 20.874, { share: 1e-4 });
  });

  it.each([5, 10, 20])('after %s s holds what the isothermal closed form says, within 0.05 %%', (atS) => {
    const ours = ATM_PA + psi(psigAfter(network, start, atS)[0]);
    pressures(`after ${atS} s`, ours, p0 * Math.exp(-atS / tau), { share: 5e-4 });
  });

  it('stops choking after 21.296 s, within 0.05 %; an adiabatic vessel would after 17.385 s', () => {
    const ours = timeToPsig(network, start, endPsig, 60);
    seconds('end of choking, isothermal', ours, 21.296, { share: 5e-4 });
    const adiabatic = adiabaticBlowdownS(tau, (ATM_PA + psi(endPsig)) / p0, 1.3);
    seconds('end of choking, adiabatic bound', adiabatic, 17.385, { share: 1e-3 });
    expect(adiabatic).toBeLessThan(ours);
  });
});
