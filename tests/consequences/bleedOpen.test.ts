import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, apiKgPerS, openAirM3, openings } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Plug out, barrel on again with its bleed standing open by a share; then the valve is opened. */
function openedOnAnOpenBleed(psig: number, share = 1): Crew {
  const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null);
  return crew.opensBleed(share).opensValve();
}

function lostIn(crew: Crew, durationS: number): number {
  const before = crew.lostKg('throughBleed');
  return crew.waits(durationS).lostKg('throughBleed') - before;
}

describe('the valve opened with the bleed open', () => {
  consequence('blows the main through the bleed: choked flow of 3 mm by API 520, within 5 %', () => {
    const crew = openedOnAnOpenBleed(35);
    expectNear(lostIn(crew, 60), 60 * apiKgPerS(openings.bleed, absPa(35)), 0.05, 'kg in a minute:');
  });

  consequence('never comes to quiet, as a bleed over a shut bore does in seconds', () => {
    const crew = openedOnAnOpenBleed(35);
    const fromS = crew.clockS;
    crew.waits(300);
    expect(crew.reads.bleedHeard).toBe(true);
    expect(crew.told('bleed.quiet', fromS)).toHaveLength(0);
  });

  consequence('passes half as much with the cock half open', () => {
    expectNear(lostIn(openedOnAnOpenBleed(35, 0.5), 60), lostIn(openedOnAnOpenBleed(35), 60) / 2, 0.01);
  });

  consequence(
    'draws a twentieth of it back into the hole, enough for the low alarm within five minutes',
    () => {
      const crew = openedOnAnOpenBleed(35).waits(300);
      const { hoseDrawnBack, freshAirM3PerS, lelFraction } = crew.scenario.job.site;
      const gasM3PerS = hoseDrawnBack * openAirM3(apiKgPerS(openings.bleed, absPa(35)));
      const steady = gasM3PerS / (gasM3PerS + freshAirM3PerS) / lelFraction;
      expectNear(crew.lelShare, steady, 0.1, 'share of LEL:');
      expect(crew.told('gas.alarm').map((fact) => fact.step)).toContain(1);
    },
  );
});
