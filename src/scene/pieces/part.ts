import { rigJoint, type MainNps, type TeeSize } from '../../core/catalogue/index.ts';
import { lathe, type RZ } from '../shape/lathe.ts';
import type { Solid, Vec3 } from '../shape/solid.ts';

/** What a part is made of: decides its colour, its hatching and nothing else. */
export type Stuff =
  | 'steel'
  | 'bright'
  | 'iron'
  | 'brass'
  | 'rubber'
  | 'seal'
  | 'glass'
  | 'paint'
  | 'marker'
  | 'dial'
  | 'soil'
  | 'wood'
  | 'coating'
  | 'scale'
  | 'tool'
  | 'weld';

/** A part that moves against its piece: turned about an axis, or slid along it, by a named parameter of the view. */
export interface Joint {
  readonly by:
    | 'valveRad'
    | 'bleedRad'
    | 'ventOpen'
    | 'needleRad'
    | 'innerTurns'
    | 'pumpStroke'
    | 'leftBoltTurns'
    | 'rightBoltTurns';
  readonly axis: Vec3;
  readonly at: Vec3;
  /** Radians (or metres, when it slides) a unit of the parameter. */
  readonly perUnit: number;
  readonly slides?: boolean;
}

export interface Part {
  readonly name: string;
  readonly stuff: Stuff;
  readonly body: Solid;
  /** Drawn in section; false for what a drawing shows whole: rods, bolts, stems, plugs' own threads excepted. */
  readonly cut: boolean;
  readonly joint?: Joint;
}

/** What a shape depends on besides the catalogue. */
export interface ShapeSpec {
  readonly teeSize: TeeSize;
  readonly mainNps: MainNps;
  /** Depends on the kind: how the tee is trimmed, whether the service is cut, and so on. */
  readonly variant?: string;
  /** Squeeze of the rubber, 0 free to 1 fully home. */
  readonly squeeze?: number;
}

export type PieceShape = (spec: ShapeSpec) => readonly Part[];

/** Kept between faces that meet, so that closed bodies never touch: 10 µm. */
export const HAIR = 0.00001;

/** A run of shallow V grooves: how a coarse thread is drawn. Points run from z0 to z1. */
export function grooves(radius: number, z0: number, z1: number, depth: number, pitch = 0.004): RZ[] {
  const count = Math.max(1, Math.round(Math.abs(z1 - z0) / pitch));
  const step = (z1 - z0) / count;
  const points: RZ[] = [];
  for (let i = 0; i < count; i++) {
    points.push([radius, z0 + step * i], [radius + depth, z0 + step * (i + 0.5)]);
  }
  points.push([radius, z1]);
  return points;
}

const { boreM, spigotOdM, spigotLengthM, skirtOdM, bodyOdM } = rigJoint;
const spigot = spigotOdM / 2 - HAIR;
const skirtDepth = spigotLengthM - 0.001;

/** Groove in the seat for its O-ring: radii and depth, m (assumed). */
const GROOVE = { innerM: boreM / 2 + 0.0024, outerM: boreM / 2 + 0.0056, depthM: 0.0022 };

/** The ring that seals the joint below a piece, lying in the groove of its seat and pressed flat on the spigot. */
export const oRing = (): Part => {
  const middle = (GROOVE.innerM + GROOVE.outerM) / 2;
  const [wide, tall] = [(GROOVE.outerM - GROOVE.innerM) / 2 - HAIR, GROOVE.depthM / 2 - HAIR];
  const round = Array.from({ length: 10 }, (_, i): RZ => {
    const a = (2 * Math.PI * i) / 10;
    return [middle + wide * Math.cos(a), GROOVE.depthM / 2 + tall * Math.sin(a)];
  });
  return { name: 'oRing', stuff: 'rubber', cut: true, body: lathe(round, { facets: 36 }) };
};

/** Underside of a piece that screws down over a spigot: from its bore, out and up to its body. Counter-clockwise. */
export const skirtBelow = (bodyR = bodyOdM / 2): RZ[] => [
  [boreM / 2, 0],
  [GROOVE.innerM, 0],
  [GROOVE.innerM, GROOVE.depthM],
  [GROOVE.outerM, GROOVE.depthM],
  [GROOVE.outerM, 0],
  [spigotOdM / 2 + HAIR, 0],
  ...[...grooves(spigotOdM / 2 + HAIR, -skirtDepth, -0.004, 0.0009)].reverse(),
  [skirtOdM / 2 - 0.001, -skirtDepth],
  [skirtOdM / 2, -skirtDepth + 0.001],
  [skirtOdM / 2, 0.01],
  [bodyR, 0.01 + Math.abs(skirtOdM / 2 - bodyR)],
];

/** Top of a piece: from its body in to the spigot and over to the bore. Counter-clockwise. */
export const spigotAbove = (heightM: number, bodyR = bodyOdM / 2): RZ[] => [
  [bodyR, heightM - spigotLengthM],
  ...grooves(spigot, heightM - spigotLengthM, heightM - 0.004, -0.0009),
  [spigot, heightM - HAIR - 0.0008],
  [spigot - 0.0008, heightM - HAIR],
  [boreM / 2, heightM - HAIR],
];

/** Height of the main's surface over a point, m from the crown, for a main along x; held at the shoulder beyond it. */
export function mainSurfaceZM(mainRadiusM: number, yM: number): number {
  const y = Math.min(Math.abs(yM), mainRadiusM * 0.97);
  return Math.sqrt(mainRadiusM * mainRadiusM - y * y) - mainRadiusM;
}
