import { describe, expect, it } from 'vitest';
import {
  absPa,
  ATM_PA,
  cbrtPortable,
  cos,
  CUBIC_FOOT_M3,
  drawInteger,
  drawUniform,
  exp,
  fahrenheitK,
  gaugePa,
  hashNoise,
  INCH_M,
  INCH_WATER_PA,
  ln,
  log10,
  pow,
  POUND_FOOT_NM,
  POUND_FORCE_N,
  psi,
  PSI_PA,
  psig,
  seedGenerator,
  sin,
  tanh,
  toAbs,
  toGauge,
  toPsi,
} from '../../src/core/units/index.ts';

describe('pressures', () => {
  it('one atmosphere is 14.696 psi and zero on a gauge', () => {
    expect(toPsi(ATM_PA)).toBeCloseTo(14.696, 3);
    expect(toGauge(absPa(ATM_PA))).toBe(0);
    expect(toAbs(gaugePa(0))).toBe(ATM_PA);
  });

  it('35 psig is 241.3 kPa on the gauge and 342.6 kPa absolute', () => {
    expect(psig(35)).toBeCloseTo(241316, 0);
    expect(toAbs(psig(35))).toBeCloseTo(342641, 0);
    expect(toPsi(psi(7))).toBeCloseTo(7, 12);
  });

  // NIST SP 811 appendix B, from memory: psi, lbf and lbf·ft follow from inch, pound and standard gravity.
  it('pounds follow from the inch, the pound and standard gravity to seven digits', () => {
    const pound = 0.45359237 * 9.80665;
    expect(Math.abs(POUND_FORCE_N / pound - 1)).toBeLessThan(1e-7);
    expect(Math.abs(PSI_PA / (pound / (INCH_M * INCH_M)) - 1)).toBeLessThan(1e-7);
    expect(Math.abs(POUND_FOOT_NM / (pound * 12 * INCH_M) - 1)).toBeLessThan(1e-6);
    expect(Math.abs(CUBIC_FOOT_M3 / (12 * INCH_M) ** 3 - 1)).toBeLessThan(1e-7);
    expect(INCH_WATER_PA * 27.7).toBeGreaterThan(PSI_PA * 0.999);
  });

  it('60 °F is 288.7056 K', () => {
    expect(fahrenheitK(60)).toBeCloseTo(288.7056, 4);
  });
});

describe('portable maths', () => {
  it('agrees with the platform to a few units in the last place', () => {
    for (let i = 1; i < 200; i += 1) {
      const x = i / 13;
      expect(exp(-x) / Math.exp(-x)).toBeCloseTo(1, 14);
      expect(ln(x)).toBeCloseTo(Math.log(x), 13);
      expect(log10(x)).toBeCloseTo(Math.log10(x), 13);
      expect(sin(x)).toBeCloseTo(Math.sin(x), 14);
      expect(cos(x)).toBeCloseTo(Math.cos(x), 14);
      expect(tanh(x)).toBeCloseTo(Math.tanh(x), 14);
      expect(pow(x, 0.37) / x ** 0.37).toBeCloseTo(1, 13);
    }
  });

  it('cube roots any length of step, from a nanosecond to a year, to fifteen digits', () => {
    for (let i = -300; i <= 300; i += 7) {
      const x = 1.37 * 10 ** i;
      expect(cbrtPortable(x) / Math.cbrt(x)).toBeCloseTo(1, 14);
    }
    expect(cbrtPortable(0)).toBe(0);
    expect(cbrtPortable(Infinity)).toBe(Infinity);
  });
});

describe('chance', () => {
  it('is the same for the same seed and another for another', () => {
    const first = drawUniform(seedGenerator(7)).value;
    expect(drawUniform(seedGenerator(7)).value).toBe(first);
    expect(drawUniform(seedGenerator(8)).value).not.toBe(first);
  });

  it('spreads evenly: a thousand draws a tenth, each within five standard errors', () => {
    let generator = seedGenerator(3);
    const counts = Array<number>(10).fill(0);
    for (let i = 0; i < 10000; i += 1) {
      const draw = drawInteger(generator, 10);
      counts[draw.value] += 1;
      generator = draw.generator;
    }
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(5 * 30);
  });

  it('noise of an instrument depends on seed, name and bucket and on nothing looked at before', () => {
    const once = hashNoise(1, 'gauge', 17);
    hashNoise(1, 'detector', 17);
    expect(hashNoise(1, 'gauge', 17)).toBe(once);
    expect(hashNoise(1, 'gauge', 18)).not.toBe(once);
    expect(hashNoise(2, 'gauge', 17)).not.toBe(once);
    expect(hashNoise(1, 'gauge2', 17)).not.toBe(once);
    let sum = 0;
    for (let i = 0; i < 4000; i += 1) {
      const noise = hashNoise(1, 'gauge', i);
      expect(noise >= -1 && noise < 1).toBe(true);
      sum += noise;
    }
    // Mean of 4,000 even draws in [-1, 1): standard error 0.0091; four of them.
    expect(Math.abs(sum / 4000)).toBeLessThan(0.037);
  });
});
