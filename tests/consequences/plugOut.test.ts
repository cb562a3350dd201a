import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import {
  boxFraction,
  inSeriesKgPerS,
  absPa,
  openAirM3,
  openings,
  sensedFraction,
  timeToReach,
} from './handbook.ts';
import { consequence, expectNear } from './law.ts';

const { lowerBore, topThread, rigBore } = openings;
/** From the main through the tee's bore, the plug's thread, the ball and the open top. */
const way = [lowerBore, topThread, rigBore, rigBore];

/** A sealed tee, the valve standing open and nothing on it; the wrench goes down and the plug comes out. */
function plugTakenOut(psig: number): Crew {
  const crew = crewFor(atPsig(psig)).upTo('sealedOnTee').opensValve();
  return crew.begins({ kind: 'plug.turn', turns: -8, holdBack: true });
}

describe('the top plug taken out with nothing above the open valve', () => {
  consequence('blows what API 520 gives for the openings in its way, within 5 %', () => {
    const crew = plugTakenOut(35);
    const before = crew.lostKg('toHole');
    crew.waits(10);
    expectNear(crew.lostKg('toHole') - before, 10 * inSeriesKgPerS(way, absPa(35)), 0.05, 'kg in 10 s:');
    expect(crew.last('plug.free').chamberClosed).toBe(false);
    expect(crew.last('blow.began').from).toBe('open');
  });

  consequence(
    'fills the hole as a ventilated box fills, and sets the alarm off when the sensor gets there',
    () => {
      const crew = plugTakenOut(35);
      const startS = crew.clockS;
      const gasM3PerS = openAirM3(inSeriesKgPerS(way, absPa(35)));
      const { holeVolumeM3, freshAirM3PerS, lelFraction, alarms } = crew.scenario.job.site;
      crew.waits(3);
      const fraction = boxFraction(gasM3PerS, freshAirM3PerS, holeVolumeM3, 3);
      expectNear(crew.lelShare, fraction / lelFraction, 0.05, 'share of LEL after 3 s:');
      expect(crew.lelShare).toBeGreaterThan(1);
      crew.waits(7);
      const alarm = crew.told('gas.alarm').find((fact) => fact.step === 2);
      const sensed = (atS: number): number =>
        sensedFraction(gasM3PerS, freshAirM3PerS, holeVolumeM3, atS, 8) / lelFraction;
      expectNear((alarm?.atS ?? 0) - startS, timeToReach(sensed, alarms[1], 60), 0.1, 'alarm, s:');
    },
  );

  consequence('lets out kilograms in proportion to the absolute pressure of the main', () => {
    // above 30 psig the plug's thread is choked, so nothing downstream is felt
    const lost = [30, 45, 55].map((psig) => {
      const crew = plugTakenOut(psig);
      const before = crew.lostKg('toHole');
      return (crew.waits(20).lostKg('toHole') - before) / absPa(psig);
    });
    expectNear(lost[1], lost[0], 0.01);
    expectNear(lost[2], lost[0], 0.01);
  });
});
