import { describe, expect } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { atPsig, crewFor, spoilt, type Crew } from '../crew.ts';
import { absPa, chokedKgPerS, MM2, openings, PSI_PA, risePaPerS } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Above the ball with the barrel on, m³ (our own sheet). */
const ABOVE_M3 = 1.28e-3;
const slightM2 = constants.valvePassingSlightCdAM2.value;
const badM2 = constants.valvePassingBadCdAM2.value;

/** Plug up in the barrel over a live tee, the rig blown free of air, the valve shut; its seat passes so much. */
function shutOver(passingM2: number, psig = 35): Crew {
  const crew = crewFor(atPsig(psig), spoilt('isolationValve', { seatPassingCdAM2: passingM2 }));
  crew.upTo('sealedOnTee').barrelOn('socket', null).opensValve().rodDown().turnsRod(-8).rodUp();
  return crew.opensBleed().waits(30).shutsBleed().shutsValve();
}

/** Bled down, shut in for so long: what has come up above the ball, Pa gauge. */
function comesUpPa(crew: Crew, durationS: number): number {
  crew.opensBleed().waits(120).shutsBleed();
  const before = crew.gaugePa('above');
  return crew.waits(durationS).gaugePa('above') - before;
}

describe('the valve seat passing', () => {
  consequence('a bad one comes up by 185 mg/s, choked flow through 0.3 mm² by API 520', () => {
    expectNear(chokedKgPerS(0.3 * MM2, absPa(35)), 185e-6, 0.01, 'the sheet, kg/s:');
    const rise = risePaPerS(chokedKgPerS(0.3 * MM2, absPa(35)), ABOVE_M3);
    expectNear(comesUpPa(shutOver(badM2), 3) / 3, rise, 0.05, 'Pa/s:');
  });

  consequence('a slight one is silent at the open bleed and puffs after two minutes shut', () => {
    const crew = shutOver(slightM2).opensBleed().waits(120);
    expect(crew.reads.bleedHeard).toBe(false);
    crew.shutsBleed().waits(119);
    const rise = risePaPerS(chokedKgPerS(0.01 * MM2, absPa(35)), ABOVE_M3);
    // choked below 12 psig only: over two minutes the mean is a little less
    expect(crew.gaugePa('above')).toBeLessThanOrEqual(120.1 * rise);
    expect(crew.gaugePa('above')).toBeGreaterThan(0.9 * 120 * rise);
    crew.opensBleed();
    expect(crew.last('bleed.turned').puff).toBe(true);
  });

  consequence('comes up in proportion to its opening and to the absolute pressure of the main', () => {
    const slight = comesUpPa(shutOver(slightM2), 30);
    expectNear(comesUpPa(shutOver(2 * slightM2), 30), 2 * slight, 0.02);
    const at = (psig: number): number => comesUpPa(shutOver(slightM2, psig), 30) / absPa(psig);
    expectNear(at(55), at(20), 0.02);
  });

  consequence(
    'the proof’s seat test tells: the reading falls short of p·(V − Va)/V by what was vented through it',
    () => {
      const tested = (passingM2: number): number => {
        const crew = crewFor(spoilt('isolationValve', { seatPassingCdAM2: passingM2 }));
        crew.upTo('sealedOnTee').underTest().pumpsTo(35).waits(60);
        const before = crew.gaugePa('above');
        crew
          .shutsValve()
          .does({ kind: 'vent.turn', open: 1 })
          .waits(60)
          .does({ kind: 'vent.turn', open: -1 });
        crew.turnsValve(1).waits(2);
        // whole 1.32 L, above the ball 0.31 L
        return (crew.gaugePa('above') - (before * (1.32 - 0.31)) / 1.32) / PSI_PA;
      };
      expect(Math.abs(tested(0))).toBeLessThan(0.5);
      expect(tested(badM2)).toBeLessThan(-5);
      expect(openings.rigBore).toBeGreaterThan(badM2);
      expect(badM2).toBeGreaterThan(0);
    },
  );

  consequence('with nothing on it, it blows into the hole for as long as it stands', () => {
    const crew = shutOver(badM2).opensBleed().waits(60).shutsBleed();
    crew.does({ kind: 'bleed.turn', angleRad: Math.PI / 2 }).takesOff('rodBarrel');
    const before = crew.lostKg('toHole');
    const lost = crew.waits(600).lostKg('toHole') - before;
    expectNear(lost, 600 * chokedKgPerS(0.3 * MM2, absPa(35)), 0.05, 'kg in ten minutes:');
  });
});
