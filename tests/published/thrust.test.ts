import { describe, expect, it } from 'vitest';
import { constants, pipes, taperThreads } from '../../src/core/catalogue/index.ts';
import { circleM2, thrustN } from '../../src/core/physics/index.ts';
import { INCH_M, POUND_FORCE_N, psi } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/* Source: statics, F = p·A at 60 psig on the schedule-40 bore and on E1 of ASME B1.20.1. Tolerance: last figure. */
const areas = comparing('Statics, F = p·A', 'schedule-40 bore', 'arithmetic', 'in²');
const pounds = comparing('Statics, F = p·A', 'at 60 psig', 'arithmetic', 'lbf');
const newtonsOf = comparing('Statics, F = p·A', 'at 60 psig', 'arithmetic', 'N');
const gasket = comparing('ASME VIII-1 appendix 2', 'Table 2-5.1, 1 in gasket at 60 psi', 'copy', 'lbf');

describe('thrust of gas at 60 psig', () => {
  it.each([
    ['3/4', 0.5333, 32.0, 142, 46.1],
    ['1', 0.8643, 51.9, 231, 72.3],
    ['1-1/4', 1.4957, 89.7, 399, 118.1],
  ] as const)('on NPS %s', (size, inch2, lbf, newtons, lbfOnThread) => {
    const area = circleM2(pipes[size].idM);
    areas(`NPS ${size}`, area / (INCH_M * INCH_M), inch2, { absolute: 6e-5 });
    const thrust = thrustN(psi(60), area);
    pounds(`NPS ${size} on its bore`, thrust / POUND_FORCE_N, lbf, { absolute: 0.06 });
    newtonsOf(`NPS ${size} on its bore`, thrust, newtons, { absolute: 0.6 });
    const onThread = thrustN(psi(60), circleM2(taperThreads[size].e1M)) / POUND_FORCE_N;
    pounds(`NPS ${size} on its thread, E1`, onThread, lbfOnThread, { absolute: 0.06 });
  });

  it('doubles with area and with pressure', () => {
    expect(thrustN(psi(60), 2e-4) / thrustN(psi(60), 1e-4)).toBeCloseTo(2, 12);
    expect(thrustN(psi(60), 1e-4) / thrustN(psi(30), 1e-4)).toBeCloseTo(2, 12);
  });
});

describe('a gasket by ASME VIII-1 appendix 2', () => {
  it('of 1 in at 60 psi with b 1/8 in, m 1 and y 200 psi needs 94.25 and 78.54 lbf', () => {
    // Formula from memory; m and y of elastomer over 75 A read in four copies. Our seating stress is that y.
    const [g, b, p, m] = [1, 0.125, 60, 1];
    const y = constants.seatingStressPa.value / psi(1);
    expect((Math.PI / 4) * g * g * p + 2 * b * Math.PI * g * m * p).toBeCloseTo(94.25, 2);
    gasket('load that seats it, y of our seating stress', Math.PI * b * g * y, 78.54, { absolute: 0.1 });
  });
});
