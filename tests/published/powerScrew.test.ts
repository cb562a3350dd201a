import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { tensionerTorqueNm } from '../../src/core/physics/index.ts';
import { INCH_M, POUND_FORCE_N } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Sources: Mott, Machine Elements in Mechanical Design, ex. 17-1 (read in a secondary copy; prints 1,809 lb·in and 27.5 %
 * with rounded steps); Shigley's Mechanical Engineering Design, ex. 8-1 (inputs and answers *from memory*, worked again
 * exactly). The formula of a screw lives here only: our tensioners and stoppers go by T = K F d.
 */
const mott = comparing('Mott, Machine Elements', 'example 17-1, Acme screw', 'copy', 'lb·in');
const shigley = comparing('Shigley', 'example 8-1, double square thread', 'memory', 'N·m');
const apart = comparing(
  'Power-screw formula',
  'our tensioner, apart by design: T = K F d is kept for dry and dirty threads',
  'computed',
  'N·m',
);

/** Torque to raise a load by a screw: T = F·dm/2·(cos φ·tan λ + f)/(cos φ − f·tan λ); φ half the thread's angle. */
function raiseNm(
  forceN: number,
  meanM: number,
  leadM: number,
  halfAngleDeg: number,
  friction: number,
): number {
  const cosine = Math.cos((halfAngleDeg * Math.PI) / 180);
  const slope = leadM / (Math.PI * meanM);
  return ((forceN * meanM) / 2) * ((cosine * slope + friction) / (cosine - friction * slope));
}

/** The same to lower it. */
const lowerNm = (
  forceN: number,
  meanM: number,
  leadM: number,
  halfAngleDeg: number,
  friction: number,
): number => -raiseNm(forceN, meanM, leadM, halfAngleDeg, -friction);

describe('a power screw', () => {
  it('of Mott’s example asks 1,809 lb·in, within 0.4 % of its rounded steps, at an efficiency of 27.5 %', () => {
    const forceN = 12_500 * POUND_FORCE_N;
    const torqueNm = raiseNm(forceN, 1.3429 * INCH_M, 0.25 * INCH_M, 14.5, 0.15);
    mott('to raise 12,500 lb', torqueNm / (POUND_FORCE_N * INCH_M), 1809, { share: 4e-3 });
    const efficiency = (forceN * 0.25 * INCH_M) / (2 * Math.PI * torqueNm);
    expect(Math.abs(efficiency / 0.275 - 1)).toBeLessThan(5e-3);
  });

  it('of Shigley’s example asks 26.18 N·m up and 9.77 down, its collar counted, at 0.311', () => {
    // d 32 mm, pitch 4, two starts, f = 0.08 in thread and collar of 40 mm mean, 6.4 kN
    const [forceN, meanM, leadM, friction] = [6400, 30e-3, 8e-3, 0.08];
    const collarNm = (forceN * friction * 40e-3) / 2;
    const up = raiseNm(forceN, meanM, leadM, 0, friction) + collarNm;
    shigley('to raise 6.4 kN', up, 26.18, { absolute: 5e-3 });
    shigley('to lower 6.4 kN', lowerNm(forceN, meanM, leadM, 0, friction) + collarNm, 9.77, {
      absolute: 5e-3,
    });
    expect((forceN * leadM) / (2 * Math.PI * up)).toBeCloseTo(0.311, 3);
  });
});

describe('our tensioner beside the formula', () => {
  // 1/2-13 UNC: pitch diameter 0.4500 in (from memory), 60° thread, one thread of each hand, no collar to rub on.
  const bare = (legN: number, friction: number): number =>
    2 * raiseNm(legN, 0.45 * INCH_M, INCH_M / 13, 30, friction);
  const ours = (legN: number): number =>
    tensionerTorqueNm(legN, constants.tensionerDiameterM.value, constants.nutFactor.value);

  it.each([
    [0.15, 'oiled', 0.9, 1.0],
    [0.3, 'dry and dirty', 0.08, 0.14],
  ] as const)(
    'asks, at a friction of %s (%s), so much more than two threads alone',
    (friction, how, from, to) => {
      apart(`600 N a leg, friction ${friction}, ${how}`, ours(600), bare(600, friction), { from, to });
    },
  );

  it('stays proportional to the leg’s pull in both', () => {
    expect(ours(1200) / ours(600)).toBeCloseTo(2, 12);
    expect(bare(1200, 0.2) / bare(600, 0.2)).toBeCloseTo(2, 12);
  });
});
