import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { compile, linkFlows } from '../../src/core/physics/index.ts';
import { GAS_CONSTANT, psi } from '../../src/core/units/index.ts';
import { filled, psigAfter, SITE_K, vessel } from '../physics/vessels.ts';

/* Sources: vacuum and leak handbooks (V·dP/dt), ASTM E515 scope, read; conversions by plain arithmetic. */
const STD_CM3_MOL = 101325e-6 / (GAS_CONSTANT * 273.15);

describe('leak rates', () => {
  it('one standard cubic centimetre a second is 4.4615e-5 mol/s; a minute’s is 1.68875e-3 Pa·m³/s', () => {
    expect(Math.abs(STD_CM3_MOL / 4.4615e-5 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(101325e-6 / 60 / 1.68875e-3 - 1)).toBeLessThan(1e-5);
  });

  it('0.5 L losing 1 kPa in 10 min at 60 °F leaks 8.33e-4 Pa·m³/s, 0.467 cm³/min at 0 °C', () => {
    const rate = (0.5e-3 * 1000) / 600;
    expect(Math.abs(rate / 8.33e-4 - 1)).toBeLessThan(1e-3);
    const cm3PerMin = (rate / (GAS_CONSTANT * SITE_K) / STD_CM3_MOL) * 60;
    expect(Math.abs(cm3PerMin - 0.467)).toBeLessThan(1e-3);
  });

  it('our vessel obeys V·dP/dt = R·T·flow, within 0.1 % over a small loss', () => {
    const network = vessel(1.32e-3, [{ id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2: 2.2e-10 }]);
    const start = filled(network, [35], [0]);
    const flow = linkFlows(compile(network), start)[0].airMolPerS;
    const lost = psi(35 - psigAfter(network, start, 10)[0]);
    expect(Math.abs((1.32e-3 * lost) / 10 / (GAS_CONSTANT * SITE_K * flow) - 1)).toBeLessThan(1e-3);
  });

  it('bubbles show from 1e-4 std cm³/s (ASTM E515): the area our catalogue gives them at 35 psig, within 10 %', () => {
    const network = vessel(1, [
      { id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2: constants.bubbleCdAM2.value },
    ]);
    const flow = linkFlows(compile(network), filled(network, [35], [1]))[0].gasMolPerS / STD_CM3_MOL;
    expect(Math.abs(flow / 1e-4 - 1)).toBeLessThan(0.1);
  });

  it('half a division in ten minutes on 100 ft of NPS 1 hides 55 cm³/min, some 90,000 times the bubble limit', () => {
    const rate = (17.0e-3 * psi(0.5)) / 600;
    const cm3PerMin = (rate / (GAS_CONSTANT * SITE_K) / STD_CM3_MOL) * 60;
    expect(Math.abs(rate - 0.0977)).toBeLessThan(2e-4);
    expect(Math.abs(cm3PerMin - 54.7)).toBeLessThan(0.5);
    expect(cm3PerMin / 60 / 1e-5).toBeGreaterThan(8.5e4);
  });
});
