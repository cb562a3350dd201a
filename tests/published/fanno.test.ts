import { describe, expect, it } from 'vitest';
import { isothermalChokeAbsPa } from '../../src/core/physics/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: published Fanno tables, k 1.4, read in two copies; f is Darcy's. The formula is ours to check only: the
 * pipe of the model is isothermal, and the last test says how far apart the two are.
 */
const bound = comparing(
  'Fanno tables, k 1.3',
  'choked flow of our isothermal pipe beside adiabatic flow',
  'copy',
  'of inlet speed',
);
const lengthToChoke = (mach: number, k: number): number => {
  const m2 = mach * mach;
  return (1 - m2) / (k * m2) + ((k + 1) / (2 * k)) * Math.log(((k + 1) * m2) / (2 + (k - 1) * m2));
};
const pressureOverChoke = (mach: number, k: number): number =>
  Math.sqrt((k + 1) / (2 + (k - 1) * mach * mach)) / mach;

describe('Fanno flow', () => {
  // Tolerance: the last printed figure.
  it.each([
    [0.1, 66.922, 10.944, 3],
    [0.2, 14.533, 5.455, 3],
    [0.4, 2.308, 2.696, 3],
    [0.5, 1.0691, 2.1381, 4],
    [0.6, 0.491, 1.763, 3],
    [0.8, 0.0723, 1.289, 3],
  ])('Mach %s chokes after fL/D %s at p/p* %s', (mach, length, pressure, figures) => {
    const unit = 10 ** -figures;
    expect(Math.abs(lengthToChoke(mach, 1.4) - length)).toBeLessThanOrEqual(0.6 * unit);
    expect(Math.abs(pressureOverChoke(mach, 1.4) - pressure)).toBeLessThanOrEqual(0.6 * unit);
  });

  // By design: gas in a buried steel pipe takes the wall's heat. The difference in choked flow stays under 5 % from
  // fL/D 2 up and falls with length.
  it.each([
    [0.1, 0.01],
    [0.2, 0.02],
    [0.4, 0.05],
  ])('entering at Mach %s, our isothermal pipe chokes within %s of its flow', (mach, share) => {
    const isothermal = isothermalChokeAbsPa(1, lengthToChoke(mach, 1.3));
    const adiabatic = mach * Math.sqrt(1.3);
    bound(`entering at Mach ${mach}`, isothermal, adiabatic, { share });
  });
});
