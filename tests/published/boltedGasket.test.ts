import { describe, expect, it } from 'vitest';
import { constants, pieces } from '../../src/core/catalogue/index.ts';
import { circleM2, cupGasketHoldsPa } from '../../src/core/physics/index.ts';
import { INCH_M, POUND_FORCE_N, PSI_PA, psi } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: ASME VIII-1 Appendix 2-5: Wm1 = π/4·G²·P + 2b·π·G·m·P, Wm2 = π·b·G·y, G the middle of a narrow gasket's contact
 * (formula *from memory*, factors of Table 2-5.1 read in copies; the worked numbers by arithmetic). The formula lives
 * here only: our second seat is self-energised (m = 0, y = 0) with a margin of its own.
 */
const worked = comparing('ASME VIII-1 App. 2-5', 'G 1 in, b 1/8 in, 60 psi, m 1, y 200', 'memory', 'lbf');
const seat = comparing(
  'ASME VIII-1 App. 2-5',
  'our second seat beside a self-energised gasket (m 0)',
  'memory',
  'N',
);

const wm1 = (gM: number, bM: number, m: number, pa: number): number =>
  (Math.PI / 4) * gM * gM * pa + 2 * bM * Math.PI * gM * m * pa;
const wm2 = (gM: number, bM: number, yPa: number): number => Math.PI * bM * gM * yPa;

describe('loads of a gasket', () => {
  it('of the worked numbers are 94.25 lbf in service and 78.54 to seat it', () => {
    worked('Wm1', wm1(INCH_M, INCH_M / 8, 1, 60 * PSI_PA) / POUND_FORCE_N, 94.25, { share: 1e-4 });
    worked('Wm2', wm2(INCH_M, INCH_M / 8, 200 * PSI_PA) / POUND_FORCE_N, 78.54, { share: 1e-4 });
  });

  it.each([35, 60])(
    'our second seat at %i psig asks more than a self-energised gasket on its mean diameter, by a tenth',
    (psig) => {
      const areaM2 = circleM2(constants.cupGasketEndLoadM.value);
      let clampN = 0;
      while (cupGasketHoldsPa(clampN, 0, areaM2, constants.cupGasketMargin.value) < psi(psig)) clampN += 1;
      seat(`${psig} psig`, clampN, wm1(constants.cupGasketEndLoadM.value, 0, 0, psi(psig)), {
        from: 0.05,
        to: 0.15,
      });
    },
  );

  it('our second seat’s flange is narrow enough for its middle to count: half its contact is no more than 1/4 in', () => {
    const contactM = (pieces.cupGasket.dims('1').flangeOdM - pieces.saddle.dims().boreM) / 2;
    expect(contactM / 2).toBeLessThanOrEqual(0.25 * INCH_M);
  });
});
