import { describe, expect, it } from 'vitest';
import { criticalRatio, nozzleCurve, nozzlePsi } from '../../src/core/physics/index.ts';
import { GAS_CONSTANT } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/* Source: ISO 6358-1, sonic conductance and the quarter ellipse below choking; the formula is *from memory*. */
const sonic = comparing(
  'ISO 6358-1',
  'sonic conductance of an ideal nozzle, air',
  'memory',
  'dm³/(s·bar·mm²)',
);
const apart = comparing(
  'ISO 6358-1',
  'quarter ellipse, furthest from our nozzle, share of choked flow',
  'memory',
  '-',
);
const ellipse = (ratio: number, b: number): number => {
  if (ratio <= b) return 1;
  const share = (ratio - b) / (1 - b);
  return Math.sqrt(1 - share * share);
};

describe('sonic conductance', () => {
  it('an ideal nozzle passes 0.1992 dm³/(s·bar) a square millimetre of air, within 0.1 %', () => {
    // Reference air of the standard: 1.185 kg/m³, 293.15 K.
    const perM2 = nozzlePsi(nozzleCurve(1.4), 0) * 1e5 * Math.sqrt(0.0289647 / (GAS_CONSTANT * 293.15));
    sonic('reference air of the standard', (perM2 * 1e-6 * 1000) / 1.185, 0.1992, { share: 1e-3 });
  });

  it('the ellipse itself: b 0.5 and ratio 0.8 give exactly 0.8', () => {
    expect(ellipse(0.8, 0.5)).toBeCloseTo(0.8, 15);
  });

  it.each([1.3, 1.4])('the ellipse lies within 1 %% of flow at choking of our nozzle, k %s', (k) => {
    // They part by design: the ellipse is a fit to valves, ours is the nozzle itself.
    const curve = nozzleCurve(k);
    let worst = 0;
    let [ours, theirs] = [0, 0];
    for (let ratio = criticalRatio(k); ratio < 0.999; ratio += 0.001) {
      const nozzle = nozzlePsi(curve, ratio) / nozzlePsi(curve, 0);
      const off = Math.abs(ellipse(ratio, criticalRatio(k)) - nozzle);
      if (off > worst) [worst, ours, theirs] = [off, nozzle, ellipse(ratio, criticalRatio(k))];
    }
    apart(`k ${k}`, ours, theirs, { absolute: 0.01 });
    expect(worst).toBeGreaterThan(0.001);
  });
});
