import { describe, expect } from 'vitest';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, circleM2, inSeriesKgPerS, openings, PSI_PA, risePaPerS } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

const BORE_M2 = circleM2(1.049 * 0.0254);
/** Stopper for NPS 1 (all assumed): core 8 mm, free 24.6 mm, 20 mm long, 1.2 MPa, M8 with K 0.25, dry friction 0.5. */
const RUBBER = {
  coreM: 8e-3,
  freeM: 24.6e-3,
  lengthM: 20e-3,
  shearPa: 1.2e6,
  screwM: 8e-3,
  nut: 0.25,
  dry: 0.5,
};

/** Stopper lowered so that its washer stands so far below the port, squeezed so firmly, the rod held. */
function stopperAt(belowPortM: number, torqueNm: number, psig = 35): Crew {
  const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper');
  return crew.clampsCollar(belowPortM).opensValve().rodDown().squeezesTo(torqueNm);
}

/** Incompressible rubber: length and wall stress once it fills the bore; axial force T/(K·d). */
function wall(torqueNm: number): { stressPa: number; areaM2: number } {
  const free = circleM2(RUBBER.freeM) - circleM2(RUBBER.coreM);
  const ring = BORE_M2 - circleM2(RUBBER.coreM);
  const stretch = free / ring;
  const fillN = RUBBER.shearPa * free * (1 / stretch ** 2 - stretch);
  const stressPa = Math.max(0, torqueNm / RUBBER.nut / RUBBER.screwM - fillN) / ring;
  return { stressPa, areaM2: Math.PI * 1.049 * 0.0254 * RUBBER.lengthM * stretch };
}

/** Rubber that stands beside the port by a share of its length leaves a quarter of the bore times its square (assumed). */
const past = (share: number): number => 0.61 * 0.25 * BORE_M2 * share ** 2;

describe('a stopper too shallow', () => {
  consequence(
    'keeps feeding the service: the bleed passes what two openings in a row do, and never dies',
    () => {
      const crew = stopperAt(-0.006, 2.3).opensBleed().waits(120);
      expectNear(crew.kgPerS('bleed'), inSeriesKgPerS([past(0.3), openings.bleed], absPa(35)), 0.05, 'kg/s:');
      expect(crew.gaugePa('service1')).toBeGreaterThan(10 * PSI_PA);
      expect(crew.reads.bleedHeard).toBe(true);
    },
  );

  consequence('feeds it less the deeper it stands, and nothing once all its rubber is below the port', () => {
    const fed = [-0.009, -0.006, -0.003, 0.001].map((below) =>
      stopperAt(below, 2.3).opensBleed().waits(120).kgPerS('bleed'),
    );
    fed.slice(1).forEach((now, i) => expect(now).toBeLessThan(fed[i]));
    expectNear(fed[0], inSeriesKgPerS([past(0.45), openings.bleed], absPa(35)), 0.05, '9 mm too high, kg/s:');
    expectNear(fed[2], inSeriesKgPerS([past(0.15), openings.bleed], absPa(35)), 0.05, '3 mm too high, kg/s:');
    expect(fed[3]).toBeLessThan(1e-9);
    expect(fed[3]).toBeGreaterThan(0);
  });
});

describe('a stopper not tight', () => {
  consequence('puffs after two minutes shut, by what its weep brings into rig and service', () => {
    const crew = stopperAt(0.004, 0.82).opensBleed().waits(90);
    crew.shutsBleed();
    // the weep grows as the rubber relaxes: summed by fives of seconds
    let weptKg = 0;
    for (let atS = 0; atS < 120; atS += 5) {
      const before = crew.kgPerS('bore');
      weptKg += (5 * (before + crew.waits(5).kgPerS('bore'))) / 2;
    }
    expectNear(crew.gaugePa('above'), risePaPerS(weptKg, 12.55e-3), 0.05, 'Pa:');
    expect(weptKg / 120).toBeGreaterThan(1e-6);
    crew.opensBleed();
    expect(crew.last('bleed.turned').puff).toBe(true);
  });

  consequence(
    'weeps less by every tenth of torque and not at all once its stress passes the gas by the margin',
    () => {
      const weeps = [0.7, 0.8, 0.9, 1.0, 1.3].map((torqueNm) => {
        const crew = stopperAt(0.004, torqueNm).opensBleed().waits(60);
        return crew.squeezesTo(torqueNm).waits(5).kgPerS('bore');
      });
      weeps.slice(1).forEach((now, i) => expect(now).toBeLessThan(weeps[i]));
      expect(wall(1.3).stressPa).toBeGreaterThan(35 * PSI_PA + 0.2e6);
      expect(weeps.at(-1)).toBeLessThan(1e-10);
      expect(weeps[0]).toBeGreaterThan(1e-6);
    },
  );

  consequence('slips when the rod is let go at the bleed: thrust p·A over friction μ·σ·A', () => {
    const crew = stopperAt(0.004, 0.65).letsGoOfRod().opensBleed().waits(60);
    expect(crew.told('stopper.slipped')).toHaveLength(1);
    const [slipped] = crew.told('stopper.slipped');
    const { stressPa, areaM2 } = wall(0.65);
    expect(slipped.thrustN).toBeLessThanOrEqual(35 * PSI_PA * BORE_M2);
    expect(slipped.thrustN).toBeGreaterThan(slipped.holdsN);
    expectNear(slipped.holdsN, RUBBER.dry * stressPa * areaM2, 0.15, 'friction, N:');
    expectNear(slipped.thrustN, slipped.holdsN, 0.02, 'it lets go as soon as thrust is the greater:');
    // and then the service is fed again
    expect(crew.reads.bleedHeard).toBe(true);
    expect(stopperAt(0.004, 0.65).opensBleed().waits(60).told('stopper.slipped')).toHaveLength(0);
  });
});
