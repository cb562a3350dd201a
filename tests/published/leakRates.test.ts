import { describe, expect, it } from 'vitest';
import { constants, pipes } from '../../src/core/catalogue/index.ts';
import { circleM2, compile, linkFlows } from '../../src/core/physics/index.ts';
import { FOOT_M, GAS_CONSTANT, psi } from '../../src/core/units/index.ts';
import { filled, psigAfter, SITE_K, vessel } from '../physics/vessels.ts';
import { comparing } from './compare.ts';

/* Sources: vacuum and leak handbooks (V·dP/dt), ASTM E515 scope, read; conversions by plain arithmetic. */
const rates = comparing('Leak-testing handbooks, V·dP/dt', 'rates by arithmetic', 'copy', 'as named');
const bubbles = comparing('ASTM E515, scope', 'bubbles show from 1e-4 std cm³/s', 'read', 'std cm³/s');
const vessels = comparing(
  'Leak-testing handbooks, V·dP/dt',
  'our vessel over a small loss',
  'arithmetic',
  'Pa·m³/s',
);
const STD_CM3_MOL = 101325e-6 / (GAS_CONSTANT * 273.15);

describe('leak rates', () => {
  it('one standard cubic centimetre a second is 4.4615e-5 mol/s; a minute’s is 1.68875e-3 Pa·m³/s', () => {
    rates('1 std cm³/s, mol/s', STD_CM3_MOL, 4.4615e-5, { share: 1e-4 });
    rates('1 std cm³/min, Pa·m³/s', 101325e-6 / 60, 1.68875e-3, { share: 1e-5 });
  });

  it('one millibar litre a second is 0.1 Pa·m³/s, 0.987 standard cubic centimetres a second, 59.2 a minute', () => {
    const perS = 0.1 / (GAS_CONSTANT * 273.15) / STD_CM3_MOL;
    rates('1 mbar·L/s, std cm³/s', perS, 0.987, { absolute: 5e-4 });
    rates('1 mbar·L/s, std cm³/min', perS * 60, 59.2, { absolute: 0.05 });
  });

  it.each([
    ['3/4', 10.49],
    ['1', 17.0],
    ['1-1/4', 29.41],
  ] as const)('100 ft of NPS %s hold %s L', (size, litres) => {
    rates(`100 ft of NPS ${size}, L`, circleM2(pipes[size].idM) * 100 * FOOT_M * 1000, litres, {
      absolute: 6e-3,
    });
  });

  it('0.5 L losing 1 kPa in 10 min at 60 °F leaks 8.33e-4 Pa·m³/s, 0.467 cm³/min at 0 °C', () => {
    const rate = (0.5e-3 * 1000) / 600;
    const cm3PerMin = (rate / (GAS_CONSTANT * SITE_K) / STD_CM3_MOL) * 60;
    rates('0.5 L, 1 kPa in 10 min, Pa·m³/s', rate, 8.33e-4, { share: 1e-3 });
    rates('0.5 L, 1 kPa in 10 min, cm³/min', cm3PerMin, 0.467, { absolute: 1e-3 });
  });

  it('our vessel obeys V·dP/dt = R·T·flow, within 0.1 % over a small loss', () => {
    const network = vessel(1.32e-3, [{ id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2: 2.2e-10 }]);
    const start = filled(network, [35], [0]);
    const flow = linkFlows(compile(network), start)[0].airMolPerS;
    const lost = psi(35 - psigAfter(network, start, 10)[0]);
    vessels('1.32 L at 35 psig', (1.32e-3 * lost) / 10, GAS_CONSTANT * SITE_K * flow, { share: 1e-3 });
  });

  it('bubbles show from 1e-4 std cm³/s (ASTM E515): the area our catalogue gives them at 35 psig, within 10 %', () => {
    const network = vessel(1, [
      { id: 'leak', between: 'vessel-air', law: 'orifice', cdAM2: constants.bubbleCdAM2.value },
    ]);
    const flow = linkFlows(compile(network), filled(network, [35], [1]))[0].gasMolPerS / STD_CM3_MOL;
    bubbles('the catalogue’s smallest bubble, 35 psig', flow, 1e-4, { share: 0.1 });
  });

  it('half a division in ten minutes on 100 ft of NPS 1 hides 55 cm³/min, some 90,000 times the bubble limit', () => {
    const rate = (17.0e-3 * psi(0.5)) / 600;
    const cm3PerMin = (rate / (GAS_CONSTANT * SITE_K) / STD_CM3_MOL) * 60;
    rates('100 ft of NPS 1, half a division in ten minutes, Pa·m³/s', rate, 0.0977, { absolute: 2e-4 });
    rates('the same, cm³/min', cm3PerMin, 54.7, { absolute: 0.5 });
    expect(cm3PerMin / 60 / 1e-5).toBeGreaterThan(8.5e4);
  });
});
