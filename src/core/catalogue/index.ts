/** What exists: sizes, dimensions and kit pieces, each number with its source. SI throughout; z is up from the main's crown. */
export * from './sizes.ts';
export * from './source.ts';
export * from './pipe.ts';
export * from './npt.ts';
export * from './fittings.ts';
export * from './piece.ts';
export { pieces } from './pieces/index.ts';
export { rigJoint } from './pieces/rigJoint.ts';
export { boreVolumeM3, type BodyDims } from './pieces/spool.ts';
export { cradleSizes, type CradleBlockDims } from './pieces/cradleBlock.ts';
export { WASHER_BELOW_PORT_M } from './pieces/keeperPlug.ts';
export * from './geometry.ts';
export * from './constants.ts';
export { constantsByTeeSize } from './constants/byTeeSize.ts';
export * from './regulations.ts';
