import { describe, expect } from 'vitest';
import { chainsOff } from '../jobStages.ts';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, apiKgPerS, MM2 } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Tee out, cap off, closing plug lowered onto the coupling; then made up as the test says. */
function loweredPlug(psig: number, id: 'closingPlug-1' | 'closingPlug-1-spare'): Crew {
  const crew = crewFor(atPsig(psig)).upTo('teeDrawn').takesOff('valveCap').takes('closingPlug', id);
  return crew.barrelOn('socket', 'closingPlug').opensValve().rodDown();
}

/** The same with the valve left open all the while, so that what leaks cannot gather under it. */
function bareUnderOpenValve(crew: Crew): Crew {
  crew.rodUp().opensBleed().waits(60).takesOff('rodBarrel').takesOff('isolationValve').takesOff('lowerSpool');
  chainsOff(crew);
  crew.takesOff('saddle').takesOff('splitCollar').takesOff('cupGasket');
  return crew.does({ kind: 'leakFluid.apply', at: 'closingPlug', watchS: 60 });
}

/** Thread found, hand-tight and 1.7 turns past it. */
const madeUp = (crew: Crew): Crew =>
  crew
    .turnsRod(-1 / 4)
    .turnsRod(4.6)
    .turnsRod(1.7);

/** Bled, rig off, leak fluid on the plug. */
function bare(crew: Crew): Crew {
  crew.rodUp().bleedsDown();
  crew.stagesDone += 1;
  return crew.upTo('bare').does({ kind: 'leakFluid.apply', at: 'closingPlug', watchS: 60 });
}

const dressed = (psig = 35): Crew => madeUp(loweredPlug(psig, 'closingPlug-1'));
const dry = (psig = 35): Crew => madeUp(loweredPlug(psig, 'closingPlug-1-spare'));
/** Straight in without finding the thread: it crosses and binds. */
const crossed = (psig = 35): Crew => loweredPlug(psig, 'closingPlug-1').turnsRod(3.45);

describe('the closing plug without sealant', () => {
  consequence('weeps 12 mg/s under leak fluid, choked flow through 0.02 mm² by API 520', () => {
    const crew = bare(dry());
    expectNear(apiKgPerS(0.02 * MM2, absPa(35)), 12e-6, 0.05, 'the sheet, kg/s:');
    expectNear(crew.kgPerS('closing'), apiKgPerS(0.02 * MM2, absPa(35)), 0.05, 'kg/s:');
    expect(['steady', 'blowing']).toContain(crew.last('leak.looked').bubbles);
  });

  consequence('where one with sealant shows no bubble: 5e-8 mm², under a ten-thousandth cm³ a second', () => {
    const crew = bare(dressed());
    expect(crew.last('leak.looked').bubbles).toBe('none');
    expectNear(crew.kgPerS('closing'), apiKgPerS(5e-8 * MM2, absPa(35)), 0.05, 'kg/s:');
  });

  consequence('puffs at the bleed after two minutes shut, before the rig is off', () => {
    const crew = dry().rodUp().opensBleed().waits(60).shutsBleed().waits(120);
    expect(crew.opensBleed().last('bleed.turned').puff).toBe(true);
    const sound = dressed().rodUp().opensBleed().waits(60).shutsBleed().waits(120);
    expect(sound.opensBleed().last('bleed.turned').puff).toBe(false);
  });

  consequence('weeps in proportion to the absolute pressure of the main', () => {
    const at = (psig: number): number => bare(dry(psig)).kgPerS('closing') / absPa(psig);
    expectNear(at(55), at(20), 0.01);
  });
});

describe('a crossed closing plug', () => {
  consequence('binds short of hand-tight and weeps 60 to 310 mg/s', () => {
    const crew = crossed();
    expect(crew.last('closing.turned').crossed).toBe(true);
    // a hand turns it as far as it goes, and then no further
    crew.tries({ kind: 'rod.turn', turns: 1 });
    expect(crew.tries({ kind: 'rod.turn', turns: 1 / 12 })).toBe('tooTight');
    const off = bareUnderOpenValve(crew);
    expect(off.kgPerS('closing')).toBeGreaterThan(60e-6);
    expect(off.kgPerS('closing')).toBeLessThan(310e-6);
    expect(off.last('leak.looked').bubbles).toBe('blowing');
  });

  consequence(
    'gathers under a shut valve: the rig taken off over it is thrown at the main’s pressure',
    () => {
      const crew = crossed().rodUp().opensBleed().waits(60).shutsBleed().shutsValve().bleedsDown();
      crew.takesOff('rodBarrel').takesOff('isolationValve');
      expectNear(crew.last('piece.removed').pressureGaugePa, absPa(35) - absPa(0), 0.01, 'Pa:');
      expect(crew.run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
    },
  );

  consequence('never comes to quiet at the bleed, with the valve open', () => {
    const crew = crossed().rodUp().opensBleed().waits(60).shutsBleed().waits(30);
    expect(crew.opensBleed().last('bleed.turned').puff).toBe(true);
  });
});
