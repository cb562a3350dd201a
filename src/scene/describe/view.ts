import type { PieceKind } from '../../core/catalogue/index.ts';
import type { LeakPlace } from '../../core/rig/index.ts';
import type { Readings } from '../../core/run/index.ts';
import type { Joint, ShapeSpec, Stuff } from '../pieces/part.ts';
import type { Vec3 } from '../shape/solid.ts';

/** Where one piece stands. World: x along the main, y along the service, z up from the main's crown; m. */
export interface ItemView {
  /** What a pick of it answers: the kit piece's id, or the kind for a part of the workpiece. */
  readonly id: string;
  readonly kind: PieceKind;
  readonly spec: ShapeSpec;
  readonly position: Vec3;
  /** Turned about its own upright axis, turns, positive clockwise seen from above. */
  readonly turns: number;
  /** Leaning across the main, rad, positive when it leans toward the service. */
  readonly tiltRad: number;
  readonly joints: Readonly<Partial<Record<Joint['by'], number>>>;
}

/** One chain over the main with its two tensioners. */
export interface ChainView {
  readonly id: string;
  readonly index: number;
  /** Plane it lies in, m along the main. */
  readonly xM: number;
  readonly hooked: boolean;
  /** Radius its links run on, and that circle's centre below the crown, m. */
  readonly radiusM: number;
  readonly centreZM: number;
  /** Arm's underside, m; half span of the two legs, m. */
  readonly armZM: number;
  readonly halfSpanM: number;
  /** Turns past snug. */
  readonly leftTurns: number;
  readonly rightTurns: number;
}

/** A hose or cable: a round bar along a path. */
export interface CableView {
  readonly id: string;
  readonly stuff: Stuff;
  readonly radiusM: number;
  readonly path: readonly Vec3[];
}

/** A round body of gas between two points, coloured by what is in it. */
export interface GasView {
  readonly cell: string;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radiusM: number;
  readonly gaugePa: number;
  /** Mole fraction of fuel gas. */
  readonly gasFraction: number;
}

/** Gas on the move along a link: the path it takes in the direction it flows. */
export interface FlowView {
  readonly link: string;
  readonly path: readonly Vec3[];
  readonly kgPerS: number;
  readonly gasFraction: number;
  /** Half width of the stream, m. */
  readonly spreadM: number;
}

/** Leak-detection fluid on a joint: a ring it was brushed on, and what comes through. */
export interface FluidView {
  readonly at: LeakPlace;
  readonly centre: Vec3;
  readonly radiusM: number;
  readonly gasMolPerS: number;
}

export interface SceneView {
  readonly items: readonly ItemView[];
  readonly chains: readonly ChainView[];
  readonly cables: readonly CableView[];
  readonly gas: readonly GasView[];
  readonly flows: readonly FlowView[];
  readonly fluid: readonly FluidView[];
  readonly hole: { readonly depthM: number; readonly floorZM: number };
  /** What the named views are aimed at, m. */
  readonly marks: { readonly topZM: number; readonly bossZM: number; readonly ballZM: number | null };
}

/** State of one cell of gas. */
export interface CellGas {
  readonly id: string;
  readonly gaugePa: number;
  readonly gasFraction: number;
}

/** Flow through one link of the network, gas and air together, positive from its `from` to its `to`. */
export interface LinkGas {
  readonly id: string;
  readonly kgPerS: number;
  readonly gasFraction: number;
}

/** What may be shown besides the pieces: what a crew reads and brushed on, and, in practice alone, the gas itself. */
export interface Shown {
  readonly readings: Pick<Readings, 'headGaugePa'> | null;
  readonly gas: { readonly cells: readonly CellGas[]; readonly links: readonly LinkGas[] } | null;
  readonly fluid: readonly { readonly at: LeakPlace; readonly gasMolPerS: number }[];
}

export const nothingShown: Shown = { readings: null, gas: null, fluid: [] };
