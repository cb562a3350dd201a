import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { alongX, alongY, join, moved } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Sliding rod, origin at its lower end; crossbar near the top, the inner rod's hand wheel above it. Drawn whole. */
export const rod: PieceShape = () => {
  const d = pieces.rod.dims();
  const r = d.odM / 2 - HAIR;
  const bar = d.lengthM - 0.03;
  const outer = join(
    lathe([
      [0, 0],
      [r - 0.0008, 0],
      [r, 0.0008],
      [r, bar - 0.014],
      [0, bar - 0.014],
    ]),
    ring(0, 0.0165, bar - 0.014 + HAIR, bar + 0.014, 20),
    moved(alongY(ring(0, 0.007, 0.0166, d.handleSpanM / 2, 14)), [0, 0, bar]),
    moved(alongY(ring(0, 0.007, -d.handleSpanM / 2, -0.0166, 14)), [0, 0, bar]),
  );
  const inner = join(
    ring(0, d.innerOdM / 2, bar + 0.014 + HAIR, d.lengthM + 0.04, 14),
    lathe([
      [0, d.lengthM + 0.0401],
      [0.022, d.lengthM + 0.0401],
      [0.026, d.lengthM + 0.046],
      [0.026, d.lengthM + 0.054],
      [0.022, d.lengthM + 0.06],
      [0, d.lengthM + 0.06],
    ]),
    moved(alongX(ring(0, 0.0045, 0.0265, 0.042, 12)), [0, 0, d.lengthM + 0.05]),
  );
  return [
    { name: 'outer', stuff: 'bright', cut: false, body: outer },
    {
      name: 'inner',
      stuff: 'brass',
      cut: false,
      body: inner,
      joint: { by: 'innerTurns', axis: [0, 0, -1], at: [0, 0, 0], perUnit: 2 * Math.PI },
    },
  ];
};
