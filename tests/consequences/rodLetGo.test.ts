import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Rod of 19.05 mm and 3.1 kg in a gland that holds 15 N (all assumed): area m², weight N. */
const AREA_M2 = (Math.PI / 4) * 0.01905 ** 2;
const WEIGHT_N = 3.1 * 9.80665;
const FRICTION_N = 15;

/** Barrel on an empty tee, nobody at the rod, the valve eased open. */
function valveOpenedUnheld(psig: number): Crew {
  const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null);
  return crew.letsGoOfRod().waits(5).opensValve().waits(5);
}

/** Gas stands above the valve as it does in the main, by a per cent. */
function expectLive(crew: Crew, psig: number): void {
  expectNear(crew.gaugePa('above'), psig * PSI_PA, 0.01, 'Pa above:');
}

describe('the rod let go when the valve opens', () => {
  consequence('is thrown at 60 psig, by pressure times area less its weight', () => {
    const crew = valveOpenedUnheld(60);
    const thrown = crew.told('rod.thrown');
    expect(thrown).toHaveLength(1);
    expectNear(thrown[0].thrustN, thrown[0].pressureGaugePa * AREA_M2 - WEIGHT_N, 0.002, 'N:');
    expect(crew.run.rig.rod.travelM).toBe(0);
    expectLive(crew, 60);
  });

  consequence('stays where it is at 15 psig', () => {
    const crew = crewFor(atPsig(15)).upTo('plugDrawn').barrelOn('socket', null).letsGoOfRod().waits(5);
    const { travelM } = crew.run.rig.rod;
    crew.opensValve().waits(60);
    expect(crew.run.rig.rod.travelM).toBe(travelM);
    expect(crew.told('rod.thrown')).toHaveLength(0);
    expectNear(crew.last('rod.still').netN, 15 * PSI_PA * AREA_M2 - WEIGHT_N, 0.05, 'N:');
    expectLive(crew, 15);
  });

  consequence('sinks through the open valve below 8 psig, though gas pushes it', () => {
    const crew = valveOpenedUnheld(7);
    const [sank] = crew.told('rod.sank', crew.last('valve.turned').atS);
    const onTheBall = crew.told('rod.sank', 0).at(-2)?.travelM ?? 0;
    expect(sank.travelM).toBeGreaterThan(onTheBall + 0.1);
    expectLive(crew, 7);
  });

  consequence('turns at the pressures where weight and friction balance: 7.84 and 23.1 psig', () => {
    const throwsAt = (WEIGHT_N + FRICTION_N) / AREA_M2 / PSI_PA;
    const sinksAt = (WEIGHT_N - FRICTION_N) / AREA_M2 / PSI_PA;
    expectNear(throwsAt, 23.1, 0.002);
    expectNear(sinksAt, 7.84, 0.002);
    const moves = (psig: number): string => {
      const crew = valveOpenedUnheld(psig);
      expectLive(crew, psig);
      if (crew.told('rod.thrown').length > 0) return 'thrown';
      return crew.told('rod.sank', crew.last('valve.turned').atS).length > 0 ? 'sinks' : 'still';
    };
    expect(moves(throwsAt + 0.1)).toBe('thrown');
    expect(moves(throwsAt - 0.1)).toBe('still');
    expect(moves(sinksAt + 0.1)).toBe('still');
    expect(moves(sinksAt - 0.1)).toBe('sinks');
  });

  consequence('throws it harder by the pressure, from a place where a rod held up would stand', () => {
    // fully up and held until the gas has come, then let go: the push is that of the whole pressure
    const push = (psig: number): number => {
      const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null).opensValve().waits(5);
      const thrown = crew.letsGoOfRod().waits(1).told('rod.thrown');
      expect(thrown, `thrown at ${psig} psig`).toHaveLength(1);
      return thrown[0].thrustN + WEIGHT_N;
    };
    expectNear(push(60), 2 * push(30), 0.002);
  });
});
