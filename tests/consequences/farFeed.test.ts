import { describe, expect } from 'vitest';
import { psi } from '../../src/core/units/index.ts';
import { atPsig, crewFor, type Crew, type Job } from '../crew.ts';
import { absPa, chokedKgPerS, circleM2, gasKg, MM2, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** The service fed at its far end past a curb valve that does not hold: opening in mm², pressure beyond in psig. */
const fed =
  (openMm2: number, beyondPsig: number) =>
  (job: Job): void => {
    job.system.service.curbPassingCdAM2 = openMm2 * MM2;
    job.system.service.beyondCurbGaugePa = psi(beyondPsig);
  };

/** Stopper in and firm, the bleed open over it for five minutes. */
const bled = (openMm2: number, beyondPsig: number): Crew =>
  crewFor(atPsig(35), fed(openMm2, beyondPsig)).upTo('stopperIn').opensBleed().waits(300);

/** 60 ft of NPS 1 (ASME B36.10M), whole first chamber and tee by our own sheet (2.29 L), m³. */
const BEHIND_M3 = circleM2(1.049 * 0.0254) * 18.288 + 2.29e-3;

describe('a service fed from its far end', () => {
  consequence(
    'never comes to quiet at the bleed: choked flow of the curb’s opening by API 520, within 5 %',
    () => {
      const crew = bled(1, 35);
      expect(crew.reads.bleedHeard).toBe(true);
      expectNear(crew.kgPerS('bleed'), chokedKgPerS(1 * MM2, absPa(35)), 0.05, 'kg/s:');
      expect(crew.told('bleed.quiet', crew.clockS - 300)).toHaveLength(0);
    },
  );

  consequence('goes with the absolute pressure beyond the curb, not with the main’s', () => {
    const ratio = bled(1, 60).kgPerS('bleed') / bled(1, 35).kgPerS('bleed');
    expectNear(ratio, absPa(60) / absPa(35), 0.03, 'ratio:');
  });

  consequence('fed by a hair it falls silent, and puffs after two minutes shut in', () => {
    const crew = bled(0.02, 35).shutsBleed();
    const fromPa = crew.gaugePa('above');
    crew.waits(120);
    const kgPerS = chokedKgPerS(0.02 * MM2, absPa(35));
    expectNear(crew.gaugePa('above') - fromPa, (kgPerS * 120) / gasKg(BEHIND_M3, 1), 0.08, 'Pa:');
    expect(crew.gaugePa('above')).toBeGreaterThan(0.5 * PSI_PA);
    crew.opensBleed();
    expect(crew.told('bleed.turned').at(-1)?.puff).toBe(true);
  });

  consequence('brings gas the main never gave: the ledger books it as come from the service', () => {
    const crew = bled(1, 35);
    const [came, went, main] = [
      crew.lostKg('toService'),
      crew.lostKg('throughBleed'),
      crew.lostKg('fromMain'),
    ];
    crew.waits(60);
    expect(crew.lostKg('toService')).toBeLessThan(came);
    // once it runs steadily, what comes in at the far end is what goes out at the bleed
    expectNear(came - crew.lostKg('toService'), crew.lostKg('throughBleed') - went, 0.01, 'kg:');
    expect(crew.lostKg('fromMain') - main).toBeLessThan(1e-6);
  });
});
