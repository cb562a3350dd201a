import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, circleM2, gasKg, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Second chamber below the ball: saddle 0.32, lower spool 0.456, valve 0.61 L (our own sheet), m³. */
const BELOW_BALL_M3 = 1.386e-3;

/** Closing plug in and sound, but the chamber under the shut valve is full of gas; the barrel is off. */
function unbledBelow(psig: number): Crew {
  const crew = crewFor(atPsig(psig)).upTo('teeDrawn').takesOff('valveCap').barrelOn('socket', 'closingPlug');
  crew
    .opensValve()
    .opensBleed()
    .waits(30)
    .shutsBleed()
    .rodDown()
    .turnsRod(-1 / 4)
    .turnsRod(4.6)
    .turnsRod(1.7)
    .rodUp();
  return crew.shutsValve().bleedsDown().takesOff('rodBarrel');
}

describe('the rig taken off before it is bled', () => {
  consequence('throws the valve with pressure times area, and that ends the job', () => {
    const crew = unbledBelow(35).takesOff('isolationValve');
    const off = crew.told('piece.removed').at(-1);
    expectNear(off?.thrustN ?? 0, 35 * PSI_PA * circleM2(0.0762), 0.001, 'N:');
    expect(crew.run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
  });

  consequence('lets what stood above the atmosphere into the hole, p·V by the gas law', () => {
    // at 10 psig the thrust, 314 N, can still be held
    const crew = unbledBelow(10);
    const before = crew.lostKg('toHole');
    crew.takesOff('isolationValve');
    expect(crew.run.rig.ending).toBeNull();
    // the valve takes 0.26 L above its ball along; saddle and spool stay full at the atmosphere's pressure
    const left = gasKg(BELOW_BALL_M3 - 0.61e-3, absPa(0));
    const blown = gasKg(BELOW_BALL_M3, absPa(10)) + gasKg(0.26e-3, absPa(0)) - left;
    expectNear(crew.lostKg('toHole') - before, blown, 0.05, 'kg:');
    expectNear(crew.last('piece.removed').thrustN, 10 * PSI_PA * circleM2(0.0762), 0.001, 'N:');
  });

  consequence('thrust doubles as the pressure doubles', () => {
    const thrust = (psig: number): number =>
      unbledBelow(psig).takesOff('isolationValve').last('piece.removed').thrustN;
    expectNear(thrust(12), 2 * thrust(6), 0.001);
  });

  consequence('chains let go first: the saddle lifts where end load outgrows the rig’s weight', () => {
    const letGo = (psig: number): Crew =>
      unbledBelow(psig).does(
        ...[0, 1].flatMap((chain) => [
          { kind: 'tensioner.turn', chain, side: 'left', turns: -1 } as const,
          { kind: 'tensioner.turn', chain, side: 'right', turns: -1 } as const,
        ]),
      );
    const taut = unbledBelow(35);
    expect(taut.tries({ kind: 'chain.hook', chain: 0, hooked: false }), 'no hand unhooks a taut leg').toBe(
      'tooTight',
    );
    const crew = letGo(35);
    // the first chain let go is enough for it to lift and hover; with the second it lifts again
    expect(crew.told('saddle.lifted').length).toBeGreaterThan(0);
    const [lifted] = crew.told('saddle.lifted');
    // gas lifts on the middle of the gasket's flange, 76.2 to 91 mm; 27 kg of rig hold it down
    const balancePsig = (27 * 9.80665) / circleM2(0.0836) / PSI_PA;
    expectNear(lifted.forceN, lifted.chamberGaugePa * circleM2(0.0836), 0.001, 'N:');
    expect(crew.last('chain.released').chamberGaugePa).toBeGreaterThan(0);
    // with the last hook off nothing but its weight holds the rig
    expect(crew.run.rig.ending).toBeNull();
    crew.does(
      { kind: 'chain.hook', chain: 0, hooked: false },
      { kind: 'chain.hook', chain: 1, hooked: false },
    );
    expect(crew.run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
    expect(letGo(0.9 * balancePsig).told('saddle.lifted')).toHaveLength(0);
    expect(letGo(1.1 * balancePsig).told('saddle.lifted').length).toBeGreaterThan(0);
  });
});
