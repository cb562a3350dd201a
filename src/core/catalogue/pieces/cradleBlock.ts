import { pipes } from '../pipe.ts';
import { mm, type MainNps } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface CradleBlockDims {
  /** Half-round groove the main lies in. */
  readonly grooveRadiusM: number;
  /** Radius the chain runs round below. */
  readonly chainRadiusM: number;
  readonly widthM: number;
  readonly chainGrooveWidthM: number;
  readonly chainGrooveDepthM: number;
}

export const cradleSizes: readonly MainNps[] = ['1-1/4', '1-1/2', '2', '3'];

/** Grooved block under a small main: brings the chain's path out to the saddle's own span. One per chain. */
export const cradleBlock = {
  kind: 'cradleBlock',
  sizedBy: 'main',
  sizes: cradleSizes,
  dims: (size): CradleBlockDims => ({
    grooveRadiusM: pipes[size].odM / 2,
    chainRadiusM: mm(57),
    widthM: mm(40),
    chainGrooveWidthM: mm(26),
    chainGrooveDepthM: mm(4),
  }),
  sources: {
    grooveRadiusM: ASSUMED,
    chainRadiusM: ASSUMED,
    widthM: ASSUMED,
    chainGrooveWidthM: ASSUMED,
    chainGrooveDepthM: ASSUMED,
  },
} satisfies PieceEntry<'main', CradleBlockDims>;
