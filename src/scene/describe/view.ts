import type { PieceKind } from '../../core/catalogue/index.ts';
import type { Action, LeakPlace } from '../../core/rig/index.ts';
import type { Readings } from '../../core/run/index.ts';
import type { Joint, ShapeSpec, Stuff } from '../pieces/part.ts';
import type { DetailShape } from '../shape/detail.ts';
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
  /** Where an unhooked end lies, m. */
  readonly floorZM: number;
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

/** The hole in the ground, the pipes that come through its walls, and what makes it safe to stand in. */
export interface HoleView {
  readonly depthM: number;
  readonly floorZM: number;
  readonly main: { readonly radiusM: number; readonly zM: number };
  readonly service: { readonly radiusM: number; readonly zM: number };
  readonly ladder: boolean;
  readonly shoring: boolean;
}

/** A small thing that is no piece: where it is, what of, and its form. */
export interface DetailView {
  readonly id: string;
  readonly stuff: Stuff;
  readonly cut: boolean;
  readonly position: Vec3;
  /** Turned about its own upright axis, turns, positive clockwise seen from above. */
  readonly turns: number;
  readonly form: DetailShape;
}

/** A length to be written beside the rig: its dimension line, and the points on the axis it is taken from. */
export interface SizeView {
  readonly id: 'travel' | 'bossToPort' | 'seatToBoss' | 'stackHeight' | 'tipOffset';
  readonly lengthM: number;
  readonly line: readonly [Vec3, Vec3];
  readonly feet: readonly [Vec3, Vec3];
}

/** Where the hands are at work: what is to be looked at, and how. */
export interface WorkView {
  readonly target: Vec3;
  /** Height that must be in the picture, m. */
  readonly tallM: number;
  /** In section; whole, as a crew sees it; or down the bore through the sight cap. */
  readonly as: 'section' | 'whole' | 'sightCap';
  /** Direction to look from, where the usual one would not show it. */
  readonly eye?: Vec3;
}

export interface SceneView {
  readonly items: readonly ItemView[];
  readonly chains: readonly ChainView[];
  readonly cables: readonly CableView[];
  readonly details: readonly DetailView[];
  readonly gas: readonly GasView[];
  readonly flows: readonly FlowView[];
  readonly fluid: readonly FluidView[];
  readonly hole: HoleView;
  /** What the named views are aimed at, m. */
  readonly marks: {
    /** Top of the stack, and of all that stands or slides above it. */
    readonly topZM: number;
    readonly highestZM: number;
    readonly bossZM: number;
    readonly ballZM: number | null;
    /** How far down the bore one looks. */
    readonly boreFloorZM: number;
  };
  readonly sizes: readonly SizeView[];
  readonly work: WorkView | null;
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
  readonly readings: Pick<Readings, 'headGaugePa' | 'atS'> | null;
  readonly gas: { readonly cells: readonly CellGas[]; readonly links: readonly LinkGas[] } | null;
  readonly fluid: readonly { readonly at: LeakPlace; readonly gasMolPerS: number }[];
  /** What the hands last did that has a place on the rig. */
  readonly doing: Action | null;
  /** Work whose place is looked at instead, where that is asked for. */
  readonly lookAt?: Action | null;
}

export const nothingShown: Shown = { readings: null, gas: null, fluid: [], doing: null };
