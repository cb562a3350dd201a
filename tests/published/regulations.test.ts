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
import { comparing } from './compare.ts';

/* Sources: US federal rules, paraphrased; where read in a copy, the line says so. The official text governs. */
const services = comparing('49 CFR 192.511', 'test pressure of a service line', 'copy', 'psig');
const mains = comparing('49 CFR 192.509', 'test pressure of a main', 'read', 'psig');
const limits = comparing('US federal rules', 'limits, read in copies', 'copy', 'as named');

describe('leak-test pressures', () => {
  // 49 CFR 192.511(a)–(c), read in Haw. Admin. R. 6-77-148, which cites it.
  it.each([
    [1, 50],
    [35, 50],
    [40, 50],
    [40.1, 90],
    [60, 90],
  ] as const)('a service line at %s psig is tested at %s psig', (operating, test) => {
    services(`operating at ${operating} psig`, requiredServiceTestPsig(operating), test, { absolute: 0 });
    expect(toPsi(requiredServiceTestGaugePa(psig(operating)))).toBeCloseTo(test, 9);
  });

  // 49 CFR 192.509(a),(b), read.
  it.each([
    [0.5, 10],
    [1, 90],
    [60, 90],
  ])('a main at %s psig is tested at %s psig', (operating, test) => {
    const ours = toPsi(requiredMainTestGaugePa(psig(operating)));
    mains(`operating at ${operating} psig`, ours, test, { absolute: 1e-9 });
  });

  it('are asked only where the rule speaks', () => {
    expect(() => requiredServiceTestPsig(-1)).toThrow(RangeError);
    expect(() => requiredServiceTestPsig(101)).toThrow(RangeError);
    expect(() => requiredMainTestGaugePa(NaN)).toThrow(RangeError);
  });
});

describe('limits', () => {
  it('a distribution main of this method stays at or below 60 psig (49 CFR 192.621(a), read in 16 NYCRR 255.621)', () => {
    limits('49 CFR 192.621(a): distribution, psig', toPsi(DISTRIBUTION_LIMIT_GAUGE_PA), 60, {
      absolute: 1e-9,
    });
  });

  it('a ladder is due from 4 ft, within 25 ft; walls are protected from 5 ft (29 CFR 1926.651(c)(2), .652(a))', () => {
    limits('29 CFR 1926.651(c)(2): ladder from, ft', LADDER_DEPTH_M / FOOT_M, 4, { absolute: 1e-9 });
    limits('29 CFR 1926.651(c)(2): ladder within, ft', LADDER_REACH_M / FOOT_M, 25, { absolute: 1e-9 });
    limits('29 CFR 1926.652(a): walls protected from, ft', PROTECTION_DEPTH_M / FOOT_M, 5, {
      absolute: 1e-9,
    });
  });

  it('air is hazardous over 20 % of the limit and under 19.5 % oxygen (29 CFR 1926.651(g))', () => {
    limits('29 CFR 1926.651(g): hazardous from, share of the limit', constants.alarmHighLel.value, 0.2, {
      absolute: 0,
    });
    limits('29 CFR 1926.651(g): least oxygen', constants.oxygenLowFraction.value, 0.195, { absolute: 0 });
  });

  it('odour must be plain at a fifth of the lower limit, 1 % gas (49 CFR 192.625(a))', () => {
    const fifth = constants.lelNfpaFraction.value / 5;
    limits('49 CFR 192.625(a): odour plain at', constants.odourFraction.value, fifth, { absolute: 1e-12 });
  });

  it('1.0 % gas is 20 % of the limit by NFPA and 22.7 % by IEC 60079-20-1', () => {
    expect(0.01 / constants.lelNfpaFraction.value).toBeCloseTo(0.2, 12);
    limits('IEC 60079-20-1: 1 % gas, share of the limit', 0.01 / constants.lelIecFraction.value, 0.227, {
      absolute: 5e-4,
    });
  });
});
