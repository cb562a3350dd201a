import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew, type Job } from '../crew.ts';
import { absPa, circleM2, gasKg, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Pitch diameter at the hand-tight plane, ASME B1.20.1, m. */
const E1_M = { '3/4': 0.98887 * 0.0254, '1': 1.23863 * 0.0254, '1-1/4': 1.58338 * 0.0254 } as const;

/** Main let up into the barrel until no air is left in it, valve shut, and the barrel unscrewed without bleeding. */
function liftedUnbled(psig: number): Crew {
  const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null);
  crew.opensValve().opensBleed().waits(30).shutsBleed().shutsValve();
  return crew.takesOff('rodBarrel');
}

/** The plug let go in the open. */
function plugThrustN(teeSize: keyof typeof E1_M, psig: number): number {
  const crew = crewFor(atPsig(psig), (job: Job) => {
    job.workpiece.teeSize = teeSize;
    job.system.service.nps = teeSize;
  });
  crew.does({ kind: 'plug.turn', turns: -8, holdBack: true });
  return crew.last('plug.free').thrustN;
}

describe('the barrel lifted before it is bled', () => {
  consequence('is thrown with pressure times area, 247 lbf at 35 psig, and that ends the job', () => {
    const crew = liftedUnbled(35);
    const off = crew.told('piece.removed').at(-1);
    expectNear(off?.thrustN ?? 0, 35 * PSI_PA * circleM2(0.0762), 0.001, 'N:');
    expectNear((off?.thrustN ?? 0) / 4.448222, 247, 0.005, 'lbf:');
    expect(crew.run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
  });

  consequence('carries off its litre of gas at the pressure it stood at', () => {
    const crew = liftedUnbled(35);
    const mol = crew.told('piece.removed').at(-1)?.gasMol ?? 0;
    expectNear(mol * 0.01737882, gasKg(1.02e-3, absPa(35)), 0.01, 'kg:');
  });

  consequence('doubles its thrust as the pressure doubles', () => {
    const thrust = (psig: number): number => liftedUnbled(psig).told('piece.removed').at(-1)?.thrustN ?? 0;
    expectNear(thrust(10), 2 * thrust(5), 0.001);
    expectNear(thrust(40), 2 * thrust(20), 0.001);
  });

  consequence('thrust goes with the area: stack and plugs of three sizes share one pressure', () => {
    const stack = liftedUnbled(20).told('piece.removed').at(-1)?.thrustN ?? 0;
    const pressurePa = stack / circleM2(0.0762);
    for (const size of ['3/4', '1', '1-1/4'] as const) {
      expectNear(plugThrustN(size, 20) / circleM2(E1_M[size]), pressurePa, 0.001, size);
    }
  });
});
