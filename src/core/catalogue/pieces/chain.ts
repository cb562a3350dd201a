import { inchM, mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface ChainDims {
  readonly linkPitchM: number;
  readonly linkWireM: number;
  readonly linkWidthM: number;
  readonly screwOdM: number;
  /** Advance of one tensioner for a turn: a right-hand and a left-hand 13 tpi thread work together. */
  readonly advancePerTurnM: number;
  readonly tensionerBodyLengthM: number;
  readonly tensionerAcrossFlatsM: number;
  readonly tensionersPerChain: number;
}

/** Chain with a tensioner at its left and its right end. */
export const chain = {
  kind: 'chain',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): ChainDims => ({
    linkPitchM: mm(19),
    linkWireM: mm(5.5),
    linkWidthM: mm(20),
    screwOdM: inchM(0.5),
    advancePerTurnM: 2 * inchM(1 / 13),
    tensionerBodyLengthM: mm(44),
    tensionerAcrossFlatsM: mm(19),
    tensionersPerChain: 2,
  }),
  sources: {
    linkPitchM: ASSUMED,
    linkWireM: ASSUMED,
    linkWidthM: ASSUMED,
    screwOdM: ASSUMED,
    advancePerTurnM: 'computed: two 13 tpi threads of opposite hand',
    tensionerBodyLengthM: ASSUMED,
    tensionerAcrossFlatsM: ASSUMED,
    tensionersPerChain: ASSUMED,
  },
} satisfies PieceEntry<'one', ChainDims>;
