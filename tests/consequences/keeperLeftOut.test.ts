import { describe, expect } from 'vitest';
import { evidence } from '../../src/core/procedure/index.ts';
import { chainsOff } from '../jobStages.ts';
import { crewFor, spoilt, type Crew } from '../crew.ts';
import { absPa, circleM2, inSeriesKgPerS, openings, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

const BORE_M2 = circleM2(1.049 * 0.0254);
const oily = spoilt('boreStopper-1', { oily: true });
/** Friction of rubber on a dry and on an oily bore, and how fast rubber relaxes: a tenth each decade from 10 s (assumed). */
const [DRY, OILY] = [0.5, 0.2];

/** Stopper set so firmly and left, rig off again, and no keeper over it. */
function withoutKeeper(torqueNm: number, isOily: boolean): Crew {
  const crew = isOily ? crewFor(oily) : crewFor();
  crew.upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper').clampsCollar(0.004);
  crew.opensValve().rodDown().squeezesTo(torqueNm);
  crew.opensBleed().waitsUntil((readings) => !readings.bleedHeard, 120);
  crew
    .does({ kind: 'collar.set', travelM: null })
    .turnsRod(1 / 4)
    .rodUp();
  crew.takesOff('rodBarrel').takesOff('isolationValve');
  chainsOff(crew);
  return crew.takesOff('saddle');
}

/** Torque at which friction just holds the main's thrust, N·m: T = K·d·(fill force + thrust/(μ·wall)·ring). */
function holdsFrom(friction: number): number {
  const [core, free] = [circleM2(8e-3), circleM2(24.6e-3)];
  const ring = BORE_M2 - core;
  const stretch = (free - core) / ring;
  const fillN = 1.2e6 * (free - core) * (1 / stretch ** 2 - stretch);
  const wallM2 = Math.PI * 1.049 * 0.0254 * 20e-3 * stretch;
  const stressPa = (35 * PSI_PA * BORE_M2) / (friction * wallM2);
  return 0.25 * 8e-3 * (fillN + stressPa * ring);
}

/** When a torque has relaxed to another, s after it was given: 10·10^((1 − share)/0.1). */
const relaxedToS = (fromNm: number, toNm: number): number => 10 * 10 ** ((1 - toNm / fromNm) / 0.1);

describe('the keeper left out', () => {
  consequence('a firm stopper holds by itself for hours, with friction to spare', () => {
    const crew = withoutKeeper(2.3, false).waits(3 * 3600);
    expect(crew.told('stopper.slipped')).toHaveLength(0);
    expect(crew.run.rig.stopper.slippedM).toBe(0);
    expect(2.3 * 0.7).toBeGreaterThan(holdsFrom(DRY));
    // the whole pressure of the main stands under it, none above
    expectNear(35 * PSI_PA - crew.gaugePa('barrel'), 35 * PSI_PA, 0.001, 'across it, Pa:');
  });

  consequence('and the hold point catches it: no keeper, no evidence that the stop is locked', () => {
    const crew = withoutKeeper(2.3, false).does({ kind: 'sign', holdPoint: 'H6' });
    const { facts, scenario } = crew.run;
    const locked = evidence('H6', facts, scenario.limits, scenario.job);
    expect(locked.met).toBe(false);
    expect(locked.items.filter((item) => !item.met).map((item) => item.id)).toContain('size');
    expect(crew.gaugePa('barrel')).toBeLessThan(100);
  });

  consequence('a marginal, oily one creeps as it relaxes, then lets go, when friction meets thrust', () => {
    const torqueNm = 1.3;
    const crew = withoutKeeper(torqueNm, true);
    const { squeezedAtS } = crew.run.rig.stopper;
    expect(crew.told('stopper.slipped')).toHaveLength(0);
    while (crew.told('stopper.slipped').length === 0 && crew.clockS < squeezedAtS + 3600) crew.waits(10);
    expect(crew.told('stopper.slipped')).toHaveLength(1);
    const [slipped] = crew.told('stopper.slipped');
    // it lets go by the time relaxation alone would have it, and not before it creeps, at a tenth over the thrust
    expect(slipped.atS - squeezedAtS).toBeLessThanOrEqual(1.02 * relaxedToS(torqueNm, holdsFrom(OILY)));
    expect(slipped.atS - squeezedAtS).toBeGreaterThan(0.9 * relaxedToS(torqueNm, holdsFrom(OILY * 0.9)));
    expectNear(slipped.thrustN, 35 * PSI_PA * BORE_M2, 0.01, 'N:');
    expect(slipped.thrustN).toBeGreaterThan(slipped.holdsN);
  });

  consequence('what then blows through the open tee is what API 520 gives for the way it found', () => {
    const crew = withoutKeeper(1.3, true);
    for (let waited = 0; crew.told('stopper.slipped').length === 0 && waited < 360; waited += 1)
      crew.waits(10);
    crew.waits(10);
    const { bore, plug } = Object.fromEntries(['bore', 'plug'].map((id) => [id, crew.kgPerS(id)]));
    expectNear(plug, bore, 0.001, 'in and out, kg/s:');
    const exposed = Math.min(1, -crew.run.rig.stopper.belowPortM / 20e-3);
    const past = 0.61 * 0.25 * BORE_M2 * exposed ** 2;
    expectNear(bore, inSeriesKgPerS([past, openings.topThread], absPa(35)), 0.05, 'kg/s:');
    expect(crew.lelShare).toBeGreaterThan(1);
  });

  consequence('with the keeper in, the same oily stopper stays where it is', () => {
    const crew = crewFor(oily).upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper').clampsCollar(0.004);
    crew.opensValve().rodDown().squeezesTo(1.3).opensBleed().waits(60).shutsBleed();
    crew
      .does({ kind: 'collar.set', travelM: null })
      .turnsRod(1 / 4)
      .rodUp()
      .shutsValve()
      .bleedsDown();
    crew
      .takesOff('rodBarrel')
      .barrelOn('socket', 'keeperPlug')
      .opensValve()
      .rodDown()
      .turnsRod(4.6)
      .turnsRod(1.2);
    const { belowPortM } = crew.run.rig.stopper;
    crew.waits(3 * 3600);
    expect(crew.told('stopper.slipped')).toHaveLength(0);
    expect(crew.run.rig.stopper.belowPortM).toBe(belowPortM);
    // friction alone would have let it go long ago: nearly the whole pressure still stands across it
    expectNear(35 * PSI_PA - crew.gaugePa('barrel'), 35 * PSI_PA, 0.01, 'across it, Pa:');
    expect(1.3 * (1 - 0.1 * Math.log10((3 * 3600) / 10))).toBeLessThan(holdsFrom(OILY));
  });
});
