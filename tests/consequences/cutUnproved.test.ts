import { describe, expect } from 'vitest';
import { chainsOff } from '../jobStages.ts';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, apiKgPerS, boxFraction, inSeriesKgPerS, openAirM3, openings } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

const { lowerBore, pilot } = openings;
/** Branch of NPS 1, sawn square. */
const branch = lowerBore;

/** Nothing in the bore at all: the saw goes through a live branch. */
function sawnLive(psig: number): Crew {
  return crewFor(atPsig(psig)).begins({ kind: 'branch.cut', part: 'through' });
}

/** Stopper squeezed a little, never tried at the bleed; keeper in, rig off, pilot hole drilled. */
function pilotOverWeakStop(torqueNm: number, waitsS: number): Crew {
  const crew = crewFor().upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper').clampsCollar(0.004);
  crew.opensValve().rodDown().squeezesTo(torqueNm);
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
  crew
    .rodUp()
    .opensBleed()
    .waitsUntil((readings) => !readings.bleedHeard, 120)
    .takesOff('rodBarrel');
  if (crew.run.rig.stack.length > 1) crew.takesOff('upperSpool');
  crew.takesOff('isolationValve');
  chainsOff(crew);
  crew.takesOff('saddle').waits(waitsS);
  return crew.begins({ kind: 'branch.cut', part: 'pilot' });
}

describe('the branch cut before the stop is proved', () => {
  consequence(
    'a live one blows bore and stub in a row by API 520, beside what the service gives back',
    () => {
      const crew = sawnLive(35);
      const before = crew.lostKg('fromMain');
      crew.waits(10);
      const flow = inSeriesKgPerS([lowerBore, branch], absPa(35));
      expectNear(crew.lostKg('fromMain') - before, 10 * flow, 0.05, 'kg from the main in 10 s:');
      // 10.2 L of service empties beside it: 25.3 g at 35 psig, of which 17.8 above the atmosphere (our own sheet)
      expectNear(crew.lostKg('toHole') - crew.lostKg('fromMain'), 17.8e-3, 0.1, 'kg of the service:');
      expect(crew.last('branch.cut').pressureGaugePa).toBeGreaterThan(0.99 * (absPa(35) - absPa(0)));
    },
  );

  consequence('fills the hole past the upper limit in seconds, as a ventilated box fills', () => {
    const crew = sawnLive(35).waits(5);
    const { holeVolumeM3, freshAirM3PerS, lelFraction } = crew.scenario.job.site;
    const gasM3PerS = openAirM3(crew.lostKg('toHole') / 5);
    const fraction = boxFraction(gasM3PerS, freshAirM3PerS, holeVolumeM3, 5);
    expectNear(crew.lelShare, fraction / lelFraction, 0.05);
    expect(crew.lelShare * lelFraction).toBeGreaterThan(0.15);
    expect(crew.told('gas.flammable')).toHaveLength(1);
  });

  consequence('a pilot hole over a stop nobody tried lets the pocket out first: choked flow of 3 mm', () => {
    const crew = pilotOverWeakStop(0.9, 4 * 3600);
    const pocketPa = crew.last('branch.cut').pressureGaugePa;
    expect(pocketPa).toBeGreaterThan(100e3);
    expectNear(crew.waits(0.05).kgPerS('pilot'), apiKgPerS(pilot, pocketPa + absPa(0)), 0.05, 'kg/s:');
    expect(crew.reads.holeHeard).toBe(true);
    // and then it shows the weep itself
    crew.waits(600);
    expectNear(crew.kgPerS('pilot'), crew.kgPerS('bore'), 0.02, 'kg/s:');
    expect(crew.kgPerS('pilot')).toBeGreaterThan(1e-6);
  });

  consequence('kilograms of a live cut go with the absolute pressure of the main', () => {
    // from 45 psig both openings choke in one ratio
    const lost = [45, 58].map((psig) => sawnLive(psig).waits(30).lostKg('fromMain') / absPa(psig));
    expectNear(lost[1], lost[0], 0.01);
  });
});
