import { describe, expect, it } from 'vitest';
import { constants, pipes } from '../../src/core/catalogue/index.ts';
import { darcyFrictionFactor } from '../../src/core/physics/index.ts';
import { INCH_M } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: Crane TP-410, full-port ball valve open: loss K = 3·fT with fT the friction of fully rough flow, and
 * Cv = √(891·d⁴/K), d in inches, as the open library `fluids` 1.0.22 has them (computed; constants *from memory*).
 * fT is our own Colebrook at a Reynolds number beyond all smoothness. Tolerance 2 %: the library fits a printed table of fT
 * that has two figures (0.023 for NPS 1).
 */
const losses = comparing(
  'Crane TP-410, by fluids 1.0.22',
  'full-port ball valve open, K = 3 fT',
  'computed',
  '-',
);
const flows = comparing(
  'Crane TP-410, by fluids 1.0.22',
  'full-port ball valve open, Cv',
  'computed',
  'gal/min',
);

const ROUGH_REYNOLDS = 1e9;

describe('a full-port ball valve that stands open', () => {
  it.each([
    ['3/4', 0.071, 76],
    ['1', 0.0668, 127],
    ['1-1/4', 0.0623, 228],
    ['2', 0.0565, 536],
  ] as const)(
    'of NPS %s loses %s of a velocity head and passes a Cv of %s, within a fiftieth',
    (size, k, cv) => {
      const { idM } = pipes[size];
      const ours = 3 * darcyFrictionFactor(ROUGH_REYNOLDS, constants.pipeRoughnessM.value / idM);
      losses(`NPS ${size}`, ours, k, { share: 0.02 });
      const bore = idM / INCH_M;
      flows(`NPS ${size}`, Math.sqrt((891 * bore * bore * bore * bore) / ours), cv, { share: 0.02 });
    },
  );

  it('is next to nothing beside what our opening into a chamber loses: 1/0.61² of a velocity head', () => {
    const ours = 1 / (constants.boreDischarge.value * constants.boreDischarge.value);
    expect(ours / 0.0668).toBeGreaterThan(35);
  });
});
