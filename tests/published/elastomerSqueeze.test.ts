import { describe, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: Mechanical Engineers' Handbook, chapter on seals, and an O-ring handbook's abstract (read in copies): static
 * squeeze at most 30 %, industrial average 20.5 %; rubber of 70 to 80 Shore A.
 */
const most = comparing('Mechanical Engineers’ Handbook, seals', 'static squeeze at most', 'copy', '-');
const usual = comparing(
  'Mechanical Engineers’ Handbook, seals',
  'ours beside the industrial average',
  'copy',
  '-',
);

describe('the squeeze of the seat ring', () => {
  it('is stopped by metal where a handbook would stop it', () => {
    most('metal stop', constants.seatRingStopSqueeze.value, 0.3, { absolute: 1e-9 });
  });

  it('seals short of what industry squeezes on average, on a sound boss and a pitted one', () => {
    usual('sound boss', constants.sealSqueezeSound.value, 0.205, { from: -0.65, to: -0.5 });
    usual('pitted boss', constants.sealSqueezePitted.value, 0.205, { from: -0.35, to: -0.15 });
  });
});
