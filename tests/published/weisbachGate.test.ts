import { describe, expect, it } from 'vitest';
import { ballValveAreaM2, circleM2 } from '../../src/core/physics/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: Weisbach's gate in a round pipe (Encyclopaedia Britannica 1911 vol. 14 p. 65; read). A gate's free area is the
 * bore less what a second circle of its size, slid across it, still covers. Our port over its seat is just that once
 * the ball is so large that it slides instead of turning. Tolerance 0.003: the table prints three figures.
 */
const gates = comparing(
  'Weisbach’s gate, Encyclopaedia Britannica 1911 vol. 14',
  'free area',
  'read',
  'of the bore',
);
const coefficients = comparing(
  'Weisbach’s gate, Encyclopaedia Britannica 1911 vol. 14',
  'discharge its printed loss asks of the free area, beside our 0.61, apart by design',
  'read',
  '-',
);

/** Bore, and a ball so large that its port slides straight across. */
const BORE_M = 0.05;
const BALL_M = 5000;
const covered = (open: number): number =>
  ballValveAreaM2(BORE_M, BALL_M, Math.asin((open * BORE_M) / (BALL_M / 2))) / circleM2(BORE_M);

/** Height of the opening over the bore → free area, loss in velocity heads. */
const TABLE = [
  [7 / 8, 0.948, 0.07],
  [3 / 4, 0.856, 0.26],
  [5 / 8, 0.74, 0.81],
  [1 / 2, 0.609, 2.06],
  [3 / 8, 0.466, 5.52],
  [1 / 4, 0.315, 17],
  [1 / 8, 0.159, 97.8],
] as const;

describe('a gate slid across a round bore', () => {
  it.each(TABLE)('opened by %s of the bore frees %s of its area', (open, area) => {
    gates(`open ${open * 8}/8`, 1 - covered(open), area, { absolute: 3e-3 });
  });

  it('frees all of it or nothing at its ends', () => {
    expect(1 - covered(1)).toBeCloseTo(1, 3);
    expect(1 - covered(0)).toBeCloseTo(0, 3);
  });

  // Borda-Carnot, any text: loss = (1/(c·area) − 1)². In a pipe the jet regains pressure; ours blows into a chamber.
  it.each(TABLE.slice(2))(
    'opened by %s of the bore asks a coefficient near our own of the area %s',
    (open, area, loss) => {
      coefficients(`open ${open * 8}/8`, 0.61, 1 / ((1 + Math.sqrt(loss)) * area), { from: -0.15, to: 0.08 });
    },
  );
});
