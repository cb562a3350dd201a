import type { Source } from './source.ts';
import type { MainNps, TeeSize } from './sizes.ts';

/** Everything that can lie on the kit board, stand on the rig or be part of the workpiece. */
export const pieceKinds = [
  'main',
  'coupling',
  'serviceTee',
  'topPlug',
  'serviceLine',
  'seatRing',
  'saddle',
  'cradleBlock',
  'chain',
  'isolationValve',
  'lowerSpool',
  'upperSpool',
  'sightCap',
  'testHead',
  'rodBarrel',
  'rod',
  'socket',
  'stopperHolder',
  'magnet',
  'depthCollar',
  'boreStopper',
  'keeperPlug',
  'cupGasket',
  'splitCollar',
  'closingPlug',
  'valveCap',
  'gaugeRing',
  'serviceCap',
  'renewalTee',
  'newTopPlug',
  'tieIn',
  'testSet',
  'purgeRiser',
] as const;
export type PieceKind = (typeof pieceKinds)[number];

/** Dimensions worked out once a size: they are asked for at every laying out of the rig. */
export function onceASize<S extends string, D extends object>(make: (size: S) => D): (size: S) => D {
  const made = new Map<S, Readonly<D>>();
  return (size) => {
    const before = made.get(size);
    if (before !== undefined) return before;
    const dims = make(size);
    made.set(size, dims);
    return dims;
  };
}

export interface SizeOf {
  tee: TeeSize;
  main: MainNps;
  one: 'one';
}

/**
 * What the catalogue says of a kind of piece: its dimensions in SI for each size, and for every dimension its source.
 * `netVolumeM3` is the gas it encloses when mounted, where it encloses any.
 */
export interface PieceEntry<By extends keyof SizeOf, D extends object> {
  readonly kind: PieceKind;
  readonly sizedBy: By;
  readonly sizes: readonly SizeOf[By][];
  readonly dims: (size: SizeOf[By]) => D;
  readonly sources: Readonly<Record<keyof D, Source>>;
  readonly netVolumeM3?: number;
}
