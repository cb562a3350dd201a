import { describe, expect, it } from 'vitest';
import { darcyFrictionFactor } from '../../src/core/physics/index.ts';
import { comparing } from './compare.ts';

/* Source: Colebrook-White solved exactly by `fluids` 1.0.22; printed to five figures. Laminar 64/Re, any text. */
const turbulent = comparing('Colebrook-White', 'solved exactly by fluids 1.0.22', 'computed', '-');
const laminar = comparing('Hagen-Poiseuille', '64/Re, any text', 'arithmetic', '-');

describe('the Darcy friction factor', () => {
  it.each([
    [1e4, 0, 0.030883],
    [1e4, 1e-3, 0.032382],
    [1e5, 0, 0.01799],
    [1e5, 1e-3, 0.022175],
    [1e5, 1e-2, 0.038504],
    [1e6, 1e-4, 0.013441],
    [1e6, 2e-3, 0.023607],
    [1e7, 1e-3, 0.019667],
    [1e8, 0.05, 0.071551],
  ])('at Re %s and roughness %s is %s, to the last figure', (reynolds, roughness, printed) => {
    turbulent(`Re ${reynolds}, ε/D ${roughness}`, darcyFrictionFactor(reynolds, roughness), printed, {
      absolute: 6e-7,
    });
  });

  it.each([100, 1000, 2000])('at Re %s is 64/Re', (reynolds) => {
    laminar(`Re ${reynolds}`, darcyFrictionFactor(reynolds, 1e-3), 64 / reynolds, { absolute: 5e-10 });
  });
});

describe('between laminar and turbulent', () => {
  it.each([0, 1e-3, 5e-3])(
    'friction at roughness %s bridges without a jump: flow rises with every drop',
    (roughness) => {
      // Ours by design: Colebrook is not claimed below Re 3000, laminar not above 2000.
      let before = 0;
      for (let reynolds = 1900; reynolds < 3200; reynolds += 10) {
        const s = reynolds * Math.sqrt(darcyFrictionFactor(reynolds, roughness));
        expect(s).toBeGreaterThan(before);
        before = s;
      }
    },
  );
});
