import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import {
  advanceExcavation,
  gasFractions,
  compile,
  lelShare,
  pumpStrokeMol,
} from '../../src/core/physics/index.ts';
import { ATM_PA } from '../../src/core/units/index.ts';
import { filled, LITRE, MM2, psigAfter, run, SITE_K, timeToPsig, vessel } from './vessels.ts';

/*
 * "Behaviour computed from it", the project's own sheet of starting numbers: what the constants must give. The sheet
 * rounds to two figures, so each tolerance is half a unit of its last figure or 5 %, whichever is wider.
 */
const V1 = constants.proofFirstM3.value;
const V2 = constants.proofSecondM3.value;
const SERVICE = 10.2 * LITRE;
const BLEED = { id: 'bleed', between: 'vessel-air', law: 'orifice', cdAM2: 4.95 * MM2 } as const;

function expectNear(ours: number, sheet: number, lastFigure: number): void {
  const tolerance = Math.max(lastFigure / 2, 0.05 * Math.abs(sheet));
  expect(Math.abs(ours - sheet), `${ours} against ${sheet} ± ${tolerance}`).toBeLessThanOrEqual(tolerance);
}

function dropPsi(volumeM3: number, cdAM2: number, startPsig: number, durationS: number): number {
  const network = vessel(volumeM3, [{ id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2 }]);
  return psigAfter(network, filled(network, [startPsig], [0]), durationS)[0] - startPsig;
}

describe('a chamber on proof with air', () => {
  it.each([
    ['good rig, 5 min at 35 psig', V1, 2e-5, 35, 300, -0.045, 0.001],
    ['good rig, 5 min at 60 psig', V1, 2e-5, 60, 300, -0.067, 0.001],
    ['gritty ring, first minute', V1, 2.2e-3, 35, 60, -0.97, 0.01],
    ['gritty ring, 5 min', V1, 2.2e-3, 35, 300, -4.7, 0.1],
    ['gritty ring in the second chamber, first minute', V2, 2.2e-3, 35, 60, -0.54, 0.01],
    ['gritty ring in the second chamber, 5 min', V2, 2.2e-3, 35, 300, -2.6, 0.1],
    ['nicked O-ring, a minute', V1, 9e-4, 35, 60, -0.4, 0.01],
    ['nicked O-ring in the second chamber, a minute', V2, 9e-4, 35, 60, -0.22, 0.01],
    ['hair on the gasket, first minute', V1, 0.02, 35, 60, -8.2, 0.1],
    ['pass limit, a minute', V1, 2.2e-4, 35, 60, -0.1, 0.01],
  ])('loses what the sheet says: %s', (_name, volume, cdAMm2, start, durationS, sheet, last) => {
    expectNear(dropPsi(volume, cdAMm2 * MM2, start, durationS), sheet, last);
  });

  it('loses in proportion to leak area and in inverse proportion to volume while the loss is small', () => {
    const base = dropPsi(V1, 2e-11, 35, 60);
    expect(dropPsi(V1, 4e-11, 35, 60) / base).toBeCloseTo(2, 2);
    expect(dropPsi(2 * V1, 2e-11, 35, 60) / base).toBeCloseTo(0.5, 3);
  });
});

describe('the hand pump', () => {
  const strokeMol = pumpStrokeMol(constants.pumpStrokeM3.value, ATM_PA, SITE_K);

  it.each([
    ['first', V1, 21],
    ['second', V2, 38],
  ])('fills the %s chamber to 35 psig in the strokes the sheet says', (_name, volume, sheet) => {
    const network = vessel(volume, []);
    const { airMol, gasMol } = filled(network, [0], [0]);
    const pumped = (strokes: number) => ({ airMol: [airMol[0] + strokes * strokeMol], gasMol });
    let strokes = 0;
    while (psigAfter(network, pumped(strokes), 0)[0] < 34.9) strokes += 1;
    expect(Math.abs(strokes - sheet)).toBeLessThanOrEqual(1);
  });

  it.each([
    [0.1, 60, 1],
    [0.2, 23, 1],
    [0.5, 3.6, 0.1],
    [1, 0.9, 0.1],
    [6, 0.03, 0.01],
  ])('against a leak of %s mm² comes to rest where the sheet says', (cdAMm2, sheet, last) => {
    const network = vessel(V1, [
      { id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2: cdAMm2 * MM2 },
      {
        id: 'pump',
        between: 'air-vessel',
        law: 'source',
        molPerS: strokeMol * constants.pumpStrokesPerS.value,
      },
    ]);
    expectNear(psigAfter(network, filled(network, [0], [0]), 900)[0], sheet, last);
  });
});

describe('a stopper that weeps', () => {
  const weep = { id: 'weep', between: 'main-vessel', law: 'orifice', cdAM2: 0.01 * MM2 } as const;

  it('passes 6.2 mg/s at 35 psig', () => {
    const network = vessel(SERVICE, [weep]);
    const step = run(network, filled(network, [0], [1]), 10);
    expectNear(step.linkGasMol[0] * 0.01737882 * 1e5, 6.2, 0.1);
  });

  it('brings chamber and service to 1.2 psig in two minutes', () => {
    const network = vessel(constants.wholeFirstM3.value + SERVICE, [weep]);
    expectNear(psigAfter(network, filled(network, [0], [1]), 120)[0], 1.2, 0.1);
  });

  it('fills the pocket behind the keeper in the minutes the sheet says', () => {
    const network = vessel(SERVICE, [weep]);
    const contents = filled(network, [0], [1]);
    expectNear(timeToPsig(network, contents, 5, 3600) / 60, 6.8, 0.1);
    expectNear(timeToPsig(network, contents, 31.5, 7200) / 60, 48, 1);
  });

  it('refills the pocket at 5 mg/s in the minutes the sheet says', () => {
    const network = vessel(SERVICE, [{ ...weep, cdAM2: 0.01 * MM2 * (5 / 6.2) }]);
    const contents = filled(network, [0], [1]);
    expectNear(timeToPsig(network, contents, 5, 3600) / 60, 8.5, 0.1);
    expectNear(timeToPsig(network, contents, 12, 7200) / 60, 20, 1);
    expectNear(timeToPsig(network, contents, 31.5, 9000) / 60, 60, 1);
  });
});

describe('the bleed', () => {
  it.each([
    ['sight cap', 0.36 * LITRE, 35, 0.36, 0.01],
    ['rod barrel', constants.aboveBallBarrelM3.value, 35, 1.3, 0.1],
    ['spool and barrel', constants.aboveBallSpoolBarrelM3.value, 35, 2.0, 0.1],
    ['second chamber', constants.wholeSecondM3.value, 35, 3.4, 0.1],
    ['first chamber and service', constants.wholeFirstM3.value + SERVICE, 35, 12.7, 0.1],
    ['first chamber and service at 60 psig', constants.wholeFirstM3.value + SERVICE, 60, 16.8, 0.1],
  ])('empties the %s to 1 psig in the time the sheet says', (_name, volume, start, sheet, last) => {
    const network = vessel(volume, [BLEED]);
    expectNear(timeToPsig(network, filled(network, [start], [1]), 1, 60), sheet, last);
  });
});

describe('gas let into the hole', () => {
  it.each([
    ['barrel at 35 psig', constants.aboveBallBarrelM3.value, 35, 3],
    ['second chamber at 35 psig', constants.wholeSecondM3.value, 35, 8],
    ['first chamber and service at 35 psig', constants.wholeFirstM3.value + SERVICE, 35, 27],
    ['first chamber and service at 60 psig', constants.wholeFirstM3.value + SERVICE, 60, 45],
  ])('peaks at the %% LEL the sheet says: %s', (_name, volume, start, sheet) => {
    const network = vessel(volume, [BLEED]);
    let box = {
      volumeM3: constants.holeVolumeM3.value,
      gasFraction: 0,
      freshAirM3PerS: constants.holeAirLightM3PerS.value,
      mixingFactor: 1,
      temperatureK: SITE_K,
      pressureAbsPa: ATM_PA,
    };
    let contents = filled(network, [start], [1]);
    let peak = 0;
    for (let i = 0; i < 200; i += 1) {
      const step = run(network, contents, 0.1);
      contents = step.contents;
      box = advanceExcavation(box, { airMol: step.linkAirMol[0], gasMol: step.linkGasMol[0] }, 0.1).box;
      peak = Math.max(peak, box.gasFraction);
    }
    expectNear(100 * lelShare(peak, constants.lelNfpaFraction.value), sheet, 1);
  });

  it('needs about 10 mg/s for 13.5 % LEL in still air', () => {
    const box = {
      volumeM3: 2,
      gasFraction: 0,
      freshAirM3PerS: constants.holeAirStillM3PerS.value,
      mixingFactor: 1,
      temperatureK: SITE_K,
      pressureAbsPa: ATM_PA,
    };
    const gasMol = ((10e-6 / 0.01737882) * 36000) / 1;
    const after = advanceExcavation(box, { airMol: 0, gasMol }, 36000).box;
    expectNear(100 * lelShare(after.gasFraction, 0.05), 13.5, 0.1);
  });
});

describe('a chamber of air filled from the main', () => {
  it.each([
    [35, 0.7, 0.01],
    [60, 0.8, 0.01],
  ])('at %s psig ends at the gas fraction the sheet says', (mainPsig, sheet, last) => {
    const network = vessel(
      V1,
      [{ id: 'open', between: 'main-vessel', law: 'orifice', cdAM2: 3e-4 }],
      mainPsig,
    );
    const step = run(network, filled(network, [0], [0]), 30);
    expectNear(gasFractions(compile(network), step.contents)[0], sheet, last);
  });

  it.each([
    [0.7, false],
    [0.8, true],
    [2.5, true],
    [2.7, false],
  ])('at a main of %s psig ends inside the flammable range: %s', (mainPsig, flammable) => {
    const network = vessel(
      V1,
      [{ id: 'open', between: 'main-vessel', law: 'orifice', cdAM2: 3e-4 }],
      mainPsig,
    );
    const step = run(network, filled(network, [0], [0]), 60);
    const fraction = gasFractions(compile(network), step.contents)[0];
    expect(fraction > 0.05 && fraction < 0.15).toBe(flammable);
  });
});
