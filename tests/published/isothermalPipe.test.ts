import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  checkLaws,
  darcyFrictionFactor,
  pipeMassFlowKgPerS,
  pipeSize,
} from '../../src/core/physics/index.ts';
import { GAS_CONSTANT } from '../../src/core/units/index.ts';
import { abs, fuelGas, SITE_K } from '../physics/vessels.ts';
import { comparing } from './compare.ts';

/*
 * Source: fluids-reference.csv (isothermal_gas with Colebrook, `fluids` 1.0.22). Its formula, after Crane, is
 * G² = ρ·(p1² − p2²)/(p1·(f·L/D + 2·ln(p1/p2))) and is fed the *mean* density; the integral has p1·M/(R·T) there. So it
 * reads √((p1 + p2)/(2·p1)) of ours. With that undone: 0.5 %, of which most is friction taken at the whole drop.
 */
const library = comparing('fluids 1.0.22, isothermal_gas', 'mean density undone', 'computed', 'kg/s');
const outright = comparing(
  'Isothermal pipe flow, any text',
  'friction solved outright',
  'arithmetic',
  'kg/s',
);
const laminar = comparing('Hagen-Poiseuille', '0.5 Pa over 60 ft of NPS 1', 'arithmetic', 'kg/s');
const csv = readFileSync(new URL('./fluids-reference.csv', import.meta.url), 'utf8');
const pressures: Readonly<Record<string, readonly [number, number]>> = {
  'isothermal_gas-01': [515010.4, 446062.9],
  'isothermal_gas-03': [308167.7, 239220.1],
  'isothermal_gas-04': [515010.4, 446062.9],
  'isothermal_gas-05': [515010.4, 308167.7],
};
const natural = { ...fuelGas, rt: GAS_CONSTANT * SITE_K };

describe('isothermal pipe flow', () => {
  const rows = checkLaws(csv).filter((check) => check.case_id.startsWith('isothermal_gas'));

  it('has four cases', () => {
    expect(rows.map((row) => row.case_id)).toEqual(Object.keys(pressures));
  });

  it.each(rows.map((row) => [row.case_id, row.ours ?? NaN, row.theirs] as const))(
    '%s: ours %s is the library’s once its mean density is undone, within 0.5 %%',
    (caseId, ours, theirs) => {
      const [p1, p2] = pressures[caseId];
      library(caseId, ours * Math.sqrt((p1 + p2) / (2 * p1)), theirs, { share: 5e-3 });
    },
  );

  it('balances friction, fittings and acceleration with friction solved outright, within 0.6 %', () => {
    const pipe = pipeSize(0.02664, 18.288, 4.572e-5, 3);
    const [p1, p2] = [abs(35), abs(20)];
    const flow = pipeMassFlowKgPerS(pipe, p1, p2, natural);
    const area = (Math.PI * 0.02664 * 0.02664) / 4;
    let g = flow / area;
    for (let i = 0; i < 50; i += 1) {
      const f = darcyFrictionFactor((g * 0.02664) / natural.viscosityPaS, 4.572e-5 / 0.02664);
      const whole = (f * 18.288) / 0.02664 + 3 + 2 * Math.log(p1 / p2);
      g = Math.sqrt(((p1 * p1 - p2 * p2) * natural.molarMassKgPerMol) / natural.rt / whole);
    }
    outright('60 ft of NPS 1, three fittings, 35 to 20 psig', flow, g * area, { share: 6e-3 });
  });

  it('is laminar at a breath of a drop: 128·μ·L·Q/(π·D⁴)', () => {
    // Hagen-Poiseuille, any text: 0.5 Pa over 60 ft of NPS 1 runs at Re about 160.
    const pipe = pipeSize(0.02664, 18.288, 4.572e-5, 0);
    const flow = pipeMassFlowKgPerS(pipe, abs(0) + 0.5, abs(0), natural);
    const volume = (0.5 * Math.PI * 0.02664 ** 4) / (128 * natural.viscosityPaS * 18.288);
    const density = (abs(0) * natural.molarMassKgPerMol) / natural.rt;
    laminar('Re about 160', flow, volume * density, { share: 1e-4 });
  });

  it('grows with the drop without a step from laminar to choked, then stays', () => {
    const pipe = pipeSize(0.02664, 18.288, 4.572e-5, 0);
    let before = 0;
    for (let i = 0; i <= 400; i += 1) {
      const drop = 10 ** (-2 + (i / 400) * 7.53);
      const flow = pipeMassFlowKgPerS(pipe, abs(35), abs(35) - Math.min(drop, 342000), natural);
      expect(flow).toBeGreaterThanOrEqual(before * (1 - 1e-9));
      if (i > 0 && before > 0) expect(flow / before).toBeLessThan(1.06);
      before = flow;
    }
    const choked = pipeMassFlowKgPerS(pipe, abs(35), 30000, natural);
    expect(pipeMassFlowKgPerS(pipe, abs(35), 15000, natural)).toBeCloseTo(choked, 12);
  });
});
