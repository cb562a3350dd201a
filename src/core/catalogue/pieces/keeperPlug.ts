import { squarePlugs, streetTees } from '../fittings.ts';
import { taperThreads } from '../npt.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED, B1614 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { boreStopper } from './boreStopper.ts';
import type { SquareHeadDims } from './topPlug.ts';

export interface KeeperPlugDims extends SquareHeadDims {
  /** Stem below the thread. */
  readonly stemM: number;
  readonly stemOdM: number;
  /** Gap left over a stopper whose upper washer stands at its nominal depth below the port. */
  readonly gapM: number;
}

/** Depth of the upper washer's top below the inside underside of the port, as aimed at. */
export const WASHER_BELOW_PORT_M = mm(4);

/** Threaded plug with a stem, over the stopper with 1–5 mm to spare. */
export const keeperPlug = {
  kind: 'keeperPlug',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): KeeperPlugDims => {
    const tee = streetTees[size];
    const bossToStopperM =
      tee.centreToFaceM + tee.portIdM / 2 + WASHER_BELOW_PORT_M - boreStopper.dims(size).stemM;
    const gapM = mm(3);
    return {
      threadLengthM: squarePlugs[size].threadLengthM,
      squareHeightM: squarePlugs[size].squareHeightM,
      acrossFlatsM: squarePlugs[size].acrossFlatsM,
      stemM: bossToStopperM - taperThreads[size].madeUpM - gapM,
      stemOdM: mm(12),
      gapM,
    };
  },
  sources: {
    threadLengthM: B1614,
    squareHeightM: B1614,
    acrossFlatsM: B1614,
    stemM: ASSUMED,
    stemOdM: ASSUMED,
    gapM: ASSUMED,
  },
} satisfies PieceEntry<'tee', KeeperPlugDims>;
