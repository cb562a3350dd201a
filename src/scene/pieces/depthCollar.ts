import { pieces } from '../../core/catalogue/index.ts';
import { latheArc } from '../shape/lathe.ts';
import { ring } from '../shape/lathe.ts';
import { alongX, join, moved } from '../shape/solid.ts';
import type { PieceShape } from './part.ts';

/** Split ring on the rod with its clamp screw at the gap (towards +y). Origin on its underside. */
export const depthCollar: PieceShape = () => {
  const d = pieces.depthCollar.dims();
  const gap = 0.09;
  const body = latheArc(
    [
      [d.boreM / 2, 0],
      [d.odM / 2, 0],
      [d.odM / 2, d.heightM],
      [d.boreM / 2, d.heightM],
    ],
    Math.PI / 2 + gap,
    Math.PI * 2.5 - gap,
  );
  const screw = join(
    moved(alongX(ring(0, 0.003, -0.0165, 0.0165, 10)), [0, 0.0165, d.heightM / 2]),
    moved(alongX(ring(0, 0.005, 0.0166, 0.022, 12)), [0, 0.0165, d.heightM / 2]),
  );
  return [
    { name: 'ring', stuff: 'paint', cut: true, body },
    { name: 'screw', stuff: 'bright', cut: false, body: screw },
  ];
};
