import { couplingSizes } from '../fittings.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { cupGasket } from './cupGasket.ts';

export interface SplitCollarDims {
  /** Bore round the gasket's sleeve. */
  readonly sleeveBoreM: number;
  /** Bore round the coupling below the sleeve, wide enough to stand clear of the weld. */
  readonly footBoreM: number;
  readonly odM: number;
  readonly earReachM: number;
  readonly earThickM: number;
  readonly boltOdM: number;
  readonly boltAcrossFlatsM: number;
  readonly boltsPerSide: number;
  /** Collar's top face below the coupling's face. */
  readonly belowFaceM: number;
}

/** Two halves bolted round the coupling; second seat for the saddle. */
export const splitCollar = {
  kind: 'splitCollar',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): SplitCollarDims => ({
    sleeveBoreM: couplingSizes[size].odM + 2 * cupGasket.dims(size).sleeveWallM - mm(0.5),
    footBoreM: couplingSizes[size].odM + mm(18),
    odM: mm(104),
    earReachM: mm(84),
    earThickM: mm(14),
    boltOdM: mm(10),
    boltAcrossFlatsM: mm(16),
    boltsPerSide: 1,
    belowFaceM: mm(7),
  }),
  sources: {
    sleeveBoreM: ASSUMED,
    footBoreM: ASSUMED,
    odM: ASSUMED,
    earReachM: ASSUMED,
    earThickM: ASSUMED,
    boltOdM: ASSUMED,
    boltAcrossFlatsM: ASSUMED,
    boltsPerSide: ASSUMED,
    belowFaceM: ASSUMED,
  },
} satisfies PieceEntry<'tee', SplitCollarDims>;
