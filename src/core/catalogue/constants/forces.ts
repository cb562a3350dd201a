import { assumed, computed } from './constant.ts';

/** Rod, tips and hand pump. */
export const forceConstants = {
  rodDiameterM: assumed([19.05e-3, 'm', 16e-3, 25e-3], 'rod'),
  rodAreaM2: computed(
    [2.85e-4, 'm²', 2.01e-4, 4.91e-4],
    'circle of 19.05 mm',
    'area gas pushes the rod out on',
  ),
  rodMassKg: assumed([3.1, 'kg', 2.5, 4], 'rod with tip and piece'),
  rodStrokeM: assumed([0.45, 'm', 0.4, 0.5], 'stroke of the rod'),
  glandFrictionN: assumed([15, 'N', 10, 25], 'gland friction along the rod'),
  socketRetentionN: assumed([40, 'N', 20, 60], 'pull at which the socket lets a square head go'),
  latchReleaseNm: assumed([3, 'N·m', 2, 4], 'torque that unlatches the holder, clockwise'),
  handHoldN: assumed([400, 'N', 250, 600], 'what two hands hold along the rod'),
  pumpStrokeM3: assumed([0.15e-3, 'm³', 0.1e-3, 0.2e-3], 'hand pump, one stroke'),
  pumpStrokesPerS: assumed([0.6667, '1/s', 0.5, 0.8], 'hand pump, 40 strokes a minute'),
} as const;
