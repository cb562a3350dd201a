import { describe, expect } from 'vitest';
import { atPsig, crewFor, spoilt, type Crew } from '../crew.ts';
import { absPa, apiKgPerS, MM2, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** A nick as it would be at 35 psig, mm² (our own sheet), and the stress an O-ring is fitted with, Pa (assumed). */
const NICK_MM2 = 9e-4;
const FITTED_PA = 0.7e6;

/** Plug out, barrel on, everything washed through with gas: the valve's joint stands at the main's pressure. */
function live(psig: number): Crew {
  const nicked = spoilt('isolationValve', { oRingNickCdAM2: NICK_MM2 * MM2 });
  const crew = crewFor(atPsig(psig), nicked).upTo('plugDrawn').barrelOn('socket', null);
  return crew.opensValve().opensBleed().waits(120).shutsBleed().waits(30);
}

/** A seal pressed on by its own gas: the nick's opening goes with one over what presses it shut. */
const openMm2 = (psig: number): number =>
  (NICK_MM2 * (FITTED_PA + 35 * PSI_PA)) / (FITTED_PA + psig * PSI_PA);

describe('a nicked O-ring under the valve', () => {
  consequence('leaks what API 520 gives for its nick at 35 psig, within 5 %', () => {
    expectNear(live(35).kgPerS('joint:isolationValve'), apiKgPerS(NICK_MM2 * MM2, absPa(35)), 0.05, 'kg/s:');
  });

  consequence('is the wider the lower the pressure, so that a low stage finds it first', () => {
    for (const psig of [15, 55]) {
      const flow = live(psig).kgPerS('joint:isolationValve');
      expectNear(flow, apiKgPerS(openMm2(psig) * MM2, absPa(psig)), 0.05, `${psig} psig, kg/s:`);
      expect(flow / apiKgPerS(NICK_MM2 * MM2, absPa(psig)) > 1).toBe(psig < 35);
    }
  });

  consequence('bubbles under leak fluid at the valve’s joint, where a sound one shows nothing', () => {
    const crew = live(35).does({ kind: 'leakFluid.apply', at: 'valveJoint', watchS: 30 });
    expect(crew.last('leak.looked').bubbles).not.toBe('none');
    const sound = crewFor(atPsig(35)).upTo('plugDrawn').barrelOn('socket', null).opensValve().waits(30);
    sound.does({ kind: 'leakFluid.apply', at: 'valveJoint', watchS: 30 });
    expect(sound.last('leak.looked').bubbles).toBe('none');
  });
});
