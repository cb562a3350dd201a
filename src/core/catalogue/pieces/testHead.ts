import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, type BodyDims } from './spool.ts';

export interface TestHeadDims extends BodyDims {
  readonly cavityM: number;
  readonly gaugeDialOdM: number;
}

/** Gauge, hand-pump filler with check valve, hand vent and relief on one head. */
export const testHead = {
  kind: 'testHead',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): TestHeadDims => ({ ...bodyDims(mm(40)), cavityM: mm(11), gaugeDialOdM: mm(100) }),
  sources: { ...bodySources, cavityM: ASSUMED, gaugeDialOdM: ASSUMED },
  netVolumeM3: 0.05e-3,
} satisfies PieceEntry<'one', TestHeadDims>;
