import { describe, expect, it } from 'vitest';
import {
  constants,
  DISTRIBUTION_LIMIT_GAUGE_PA,
  LADDER_DEPTH_M,
  LADDER_REACH_M,
  PROTECTION_DEPTH_M,
  requiredMainTestGaugePa,
  requiredServiceTestGaugePa,
  requiredServiceTestPsig,
} from '../../src/core/catalogue/index.ts';
import { FOOT_M, psig, toPsi } from '../../src/core/units/index.ts';

/* Sources: US federal rules, paraphrased; where read in a copy, the line says so. The official text governs. */
describe('leak-test pressures', () => {
  // 49 CFR 192.511(a)–(c), read in Haw. Admin. R. 6-77-148, which cites it.
  it.each([
    [1, 50],
    [35, 50],
    [40, 50],
    [40.1, 90],
    [60, 90],
  ] as const)('a service line at %s psig is tested at %s psig', (operating, test) => {
    expect(requiredServiceTestPsig(operating)).toBe(test);
    expect(toPsi(requiredServiceTestGaugePa(psig(operating)))).toBeCloseTo(test, 9);
  });

  // 49 CFR 192.509(a),(b), read.
  it.each([
    [0.5, 10],
    [1, 90],
    [60, 90],
  ])('a main at %s psig is tested at %s psig', (operating, test) => {
    expect(toPsi(requiredMainTestGaugePa(psig(operating)))).toBeCloseTo(test, 9);
  });

  it('are asked only where the rule speaks', () => {
    expect(() => requiredServiceTestPsig(-1)).toThrow(RangeError);
    expect(() => requiredServiceTestPsig(101)).toThrow(RangeError);
    expect(() => requiredMainTestGaugePa(NaN)).toThrow(RangeError);
  });
});

describe('limits', () => {
  it('a distribution main of this method stays at or below 60 psig (49 CFR 192.621(a), read in 16 NYCRR 255.621)', () => {
    expect(toPsi(DISTRIBUTION_LIMIT_GAUGE_PA)).toBeCloseTo(60, 9);
  });

  it('a ladder is due from 4 ft, within 25 ft; walls are protected from 5 ft (29 CFR 1926.651(c)(2), .652(a))', () => {
    expect(LADDER_DEPTH_M / FOOT_M).toBeCloseTo(4, 9);
    expect(LADDER_REACH_M / FOOT_M).toBeCloseTo(25, 9);
    expect(PROTECTION_DEPTH_M / FOOT_M).toBeCloseTo(5, 9);
  });

  it('air is hazardous over 20 % of the limit and under 19.5 % oxygen (29 CFR 1926.651(g))', () => {
    expect(constants.alarmHighLel.value).toBe(0.2);
    expect(constants.oxygenLowFraction.value).toBe(0.195);
  });

  it('odour must be plain at a fifth of the lower limit, 1 % gas (49 CFR 192.625(a))', () => {
    expect(constants.odourFraction.value).toBeCloseTo(constants.lelNfpaFraction.value / 5, 12);
  });

  it('1.0 % gas is 20 % of the limit by NFPA and 22.7 % by IEC 60079-20-1', () => {
    expect(0.01 / constants.lelNfpaFraction.value).toBeCloseTo(0.2, 12);
    expect(0.01 / constants.lelIecFraction.value).toBeCloseTo(0.227, 3);
  });
});
