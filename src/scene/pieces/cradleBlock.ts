import { cradleSizes, pieces } from '../../core/catalogue/index.ts';
import { prism } from '../shape/prism.ts';
import type { Point2 } from '../shape/polygon.ts';
import { alongX, join, moved } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Half-round block under a small main, origin on the main's axis, groove upward, chain groove round its underside. */
export const cradleBlock: PieceShape = ({ mainNps }) => {
  const size = cradleSizes.includes(mainNps) ? mainNps : '3';
  const d = pieces.cradleBlock.dims(size);
  const arc = (radius: number, fromRad: number, toRad: number): Point2[] =>
    Array.from({ length: 25 }, (_, i) => {
      const a = fromRad + ((toRad - fromRad) * i) / 24;
      return [radius * Math.cos(a), radius * Math.sin(a)] as const;
    });
  // In (y, z): the groove above, the chain's half circle below.
  const section = (outer: number): Point2[] => [
    ...arc(outer, Math.PI, 2 * Math.PI),
    ...arc(d.grooveRadiusM + HAIR, 2 * Math.PI, Math.PI),
  ];
  const flank = (d.widthM - d.chainGrooveWidthM) / 2;
  const half = d.widthM / 2;
  const slab = (outer: number, from: number, to: number) => alongX(prism(section(outer), from, to));
  const body = join(
    slab(d.chainRadiusM + d.chainGrooveDepthM, -half, -half + flank - HAIR),
    slab(d.chainRadiusM, -half + flank, half - flank),
    slab(d.chainRadiusM + d.chainGrooveDepthM, half - flank + HAIR, half),
  );
  return [{ name: 'block', stuff: 'iron', cut: true, body: moved(body, [0, 0, 0]) }];
};
