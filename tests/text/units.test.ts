import { describe, expect, it } from 'vitest';
import {
  clock,
  decibels,
  degrees,
  duration,
  finePercent,
  percent,
  turnsOf,
  unitsOf,
} from '../../src/text/index.ts';

const us = unitsOf('us');
const si = unitsOf('si');

describe('quantities as a gauge or a rule shows them', () => {
  it.each([
    // NIST SP 811 appendix B.8 factors: 1 psi = 6894.757 Pa, 1 lbf·ft = 1.355818 N·m, 1 lbf = 4.448222 N; exact to
    // the last digit shown.
    [us.pressure(241316.5), '35.0 psig'],
    [si.pressure(241316.5), '241 kPa'],
    [si.pressure(3447.4), '3.4 kPa'],
    [us.difference(344.7), '0.05 psi'],
    [us.torque(135.58), '100 lbf·ft'],
    [si.torque(135.58), '136 N·m'],
    [us.fingerTorque(2.26), '20 lbf·in'],
    [si.fingerTorque(2.26), '2.3 N·m'],
    [us.length(0.0254), '1.00 in'],
    [us.length(0.298), '11.73 in'],
    [si.length(0.298), '298 mm'],
    [si.length(0.004), '4.0 mm'],
    [us.distance(18.288), '60.0 ft'],
    [us.mass(0.0285), '1.0 oz'],
    [si.mass(0.006), '6.0 g'],
    [us.force(444.82), '100 lbf'],
    [si.energy(40.2), '40 J'],
    [us.pressure(-0.0001), '0.0 psig'],
  ])('%s is written %s', (written, expected) => {
    expect(written).toBe(expected);
  });

  it('says turns in a fitter’s fractions', () => {
    expect([1 / 12, 0.125, -1 / 3, 1, 1.25, 2, 0.07, 0].map(turnsOf)).toEqual([
      '1/12 turn',
      '1/8 turn',
      '1/3 turn',
      '1 turn',
      '1 1/4 turns',
      '2 turns',
      '0.07 turn',
      'no turn',
    ]);
  });

  it('says time, share, angle and sound', () => {
    expect([0.7, 45, 120, 125, 3840].map(duration)).toEqual([
      '0.7 s',
      '45 s',
      '2 min',
      '2 min 5 s',
      '1 h 4 min',
    ]);
    expect([0, 65.9, 3849].map(clock)).toEqual(['0:00', '1:05', '1:04:09']);
    expect([percent(0.136), finePercent(0.2085), degrees(Math.PI / 2), decibels(71.4)]).toEqual([
      '14 %',
      '20.8 %',
      '90°',
      '71 dB',
    ]);
  });
});
