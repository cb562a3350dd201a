import type { Defects, Job, KitKind, StackedKind } from './job.ts';
import type { CleanPlace, DetectorPlace, GaugeName, MarkPlace, OilPlace, SiteTask } from './actions.ts';

/**
 * The rig: every piece, where it is and in what condition. Plain data, one branch a piece; an illegal condition
 * does not type-check. Nothing here is a pressure: pressures belong to the gas in the cells.
 *
 * Signs and origins: turns are counted from fully made up and grow as a thread is backed off; travel of the rod is
 * zero when fully up in its barrel and grows downward; lengths in m, angles in rad, torque in N·m, time in s.
 */
export interface RigState {
  readonly job: Job;
  readonly kit: Readonly<Record<string, KitPiece>>;
  readonly site: SiteState;
  readonly plug: PlugState;
  readonly tee: TeeState;
  readonly branch: BranchState;
  readonly seatRing: SeatRingState;
  readonly collar: SplitCollarState;
  readonly saddle: SaddleState;
  readonly chains: readonly [ChainState, ChainState];
  /** Pieces above the saddle, from below: valve, spools, then the piece on top. */
  readonly stack: readonly StackPiece[];
  readonly valve: { readonly openRad: number };
  readonly testHead: { readonly ventOpen: number; readonly pumpUntilS: number; readonly strokes: number };
  /** Bleed cock of the piece on top, rad open. */
  readonly bleed: { readonly openRad: number };
  readonly hose: 'none' | 'inHole' | 'away';
  readonly rod: RodState;
  readonly stopper: StopperState;
  readonly keeper: KeeperState;
  readonly closing: ClosingPlugState;
  readonly renewal: RenewalState;
  readonly line: LineState;
  readonly testSet: TestSetState;
  readonly ending: Ending | null;
}

export interface KitPiece {
  readonly id: string;
  readonly kind: KitKind;
  readonly stamped: string | null;
  readonly trueSize: string | null;
  readonly defects: Defects;
  readonly inspected: boolean;
  readonly rejected: boolean;
  /** `board`: lying ready; `rig`: fitted; `rod`: on or in the rod's tip; `lost`: in the main. */
  readonly where: 'board' | 'rig' | 'rod' | 'lost';
  readonly sealant: boolean;
}

export interface SiteState {
  /** Time each task was last done; absent means not done. */
  readonly done: Readonly<Partial<Record<SiteTask, number>>>;
  readonly cleaned: Readonly<Record<CleanPlace, boolean>>;
  /** When penetrating oil last went on each thread, s. */
  readonly oiledAtS: Readonly<Partial<Record<OilPlace, number>>>;
  readonly marks: Readonly<Partial<Record<MarkPlace, number>>>;
  /** Gauges found at rest on zero; a gauge not named was not looked at. */
  readonly zeroed: Readonly<Partial<Record<GaugeName, boolean>>>;
  readonly detectorBumped: boolean;
  readonly detectorAt: DetectorPlace;
  readonly bonded: { readonly tee: boolean; readonly service: boolean };
  readonly curbOpen: boolean;
  readonly inHole: boolean;
  readonly mainIsolated: boolean;
  /** When the valves that shut the main will be shut, s; null while nobody has gone to them. */
  readonly isolatedAtS: number | null;
  readonly record: Readonly<Record<string, string>>;
  readonly signed: Readonly<Record<string, number>>;
  /** When the hose was last led, s; absent before. */
  readonly hoseLedAtS?: number;
}

export interface PlugState {
  readonly at: 'tee' | 'rod' | 'out';
  /** Turns backed off from its original make-up; negative is tighter. */
  readonly turnsBack: number;
  /** The old bite has been broken: it now turns at running torque until snugged. */
  readonly broken: boolean;
  readonly torqueNm: number;
}

export interface TeeState {
  readonly at: 'coupling' | 'rod' | 'out';
  readonly turnsBack: number;
  readonly broken: boolean;
  /** Turned together with the plug or keeper because nothing held it back, turns. */
  readonly strained: number;
  /** Circle swept as it turns about the coupling's axis, m diameter. */
  readonly sweptM: number;
  readonly trim: 'whole' | 'sawn' | 'dressed';
  readonly filed: boolean;
}

export interface BranchState {
  readonly cut: 'whole' | 'pilot' | 'through';
  /** The pilot opening is plugged again. */
  readonly pilotPlugged: boolean;
  readonly purged: boolean;
  readonly capped: boolean;
}

export interface SeatRingState {
  readonly piece: string | null;
}

export interface SplitCollarState {
  readonly gasket: string | null;
  readonly collar: string | null;
  /** Turns of the left and right bolt past snug. */
  readonly bolts: readonly [number, number];
}

export interface SaddleState {
  readonly on: 'board' | 'tee' | 'coupling';
  readonly piece: string | null;
  /** Cradle blocks standing under a small main. */
  readonly cradles: readonly string[];
}

export interface ChainState {
  readonly piece: string | null;
  readonly hooked: boolean;
  /** Turns past snug of each tensioner. */
  readonly left: number;
  readonly right: number;
  /** Slack crept into the leg as scale and links settled, m. */
  readonly settledM: number;
  /** Slack still to come when the links are tapped, m. */
  readonly unsettledM: number;
  readonly taps: number;
}

export interface StackPiece {
  readonly id: string;
  readonly kind: StackedKind;
  /** Make-up torque of the joint below this piece, N·m. */
  readonly jointNm: number;
}

export type RodLoad = 'plug' | 'stopper' | 'tee' | 'keeper' | 'closing' | 'renewal' | 'newPlug';

export interface RodState {
  /** Kit id of the tip fitted, or null. */
  readonly tip: string | null;
  /** What hangs on the tip. */
  readonly load: RodLoad | null;
  /** Travel down from fully up, m. */
  readonly travelM: number;
  readonly held: boolean;
  /** Travel at which the depth collar stops the rod, m, or null. */
  readonly collarTravelM: number | null;
  /** The tip is down on a thing that is fixed in its thread or bore, so the rod cannot rise. */
  readonly engaged: RodLoad | null;
  /** Nobody holds it and it has come to rest where gas or weight took it. */
  readonly resting: boolean;
  /** Pulls on a socket that has jammed on its head. */
  readonly stuckPulls: number;
  /** Turned by the hand since it was last engaged, turns. */
  readonly turns: number;
}

export interface StopperState {
  readonly piece: string | null;
  /**
   * `set`: squeezed in the bore or lying where it was left; `fallen`: let go, and lying across the port or on the ball;
   * `lost`: fallen into the main.
   */
  readonly at: 'board' | 'holder' | 'set' | 'fallen' | 'lost';
  /** Upper washer below the port's underside, m (negative: above it). */
  readonly belowPortM: number;
  /** Squeeze torque reached, N·m, before relaxation. */
  readonly torqueNm: number;
  readonly squeezeTurns: number;
  /** When it was last squeezed, s: relaxation runs from here. */
  readonly squeezedAtS: number;
  readonly tiltRad: number;
  /** It has slipped up under pressure. */
  readonly slippedM: number;
}

export interface KeeperState {
  readonly piece: string | null;
  readonly at: 'board' | 'rod' | 'tee';
  /** Turns engaged in the tee's top thread. */
  readonly engagedTurns: number;
  readonly torqueNm: number;
  /** Turned after its paint mark, turns. */
  readonly movedTurns: number;
}

/** A male thread being made up from nothing. */
export interface ThreadState {
  readonly engagedTurns: number;
  readonly torqueNm: number;
  readonly crossed: boolean;
  /** The start of the thread was found by turning back first. */
  readonly threadFound: boolean;
}

export interface ClosingPlugState extends ThreadState {
  readonly piece: string | null;
  readonly at: 'board' | 'rod' | 'coupling';
}

/**
 * The renewal tee. Once its thread has bitten in the coupling `tee`, `stopper` and `keeper` tell of it and of what
 * came in it; here stands what a street tee does not have.
 */
export interface RenewalState extends ThreadState {
  readonly piece: string | null;
  readonly at: 'board' | 'rod' | 'coupling';
  /** Farthest it was ever screwed in, turns: turned back from there a taper thread no longer seals. */
  readonly mostTurns: number;
  /** Its own top plug, run in at the end. */
  readonly plug: NewPlugState;
}

export interface NewPlugState extends ThreadState {
  readonly piece: string | null;
  readonly at: 'board' | 'rod' | 'tee';
}

/** The service that leaves the renewal tee. */
export interface LineState {
  /** A new line lies in its trench; the old one needs no laying. */
  readonly laid: boolean;
  /** Cap on the main end of a new line. */
  readonly cap: string | null;
  /** What joins the line to the tee's branch. */
  readonly tieIn: string | null;
  /** The joint was pulled about when the tee was turned with it on. */
  readonly tieInStrained: boolean;
  readonly riser: string | null;
  /** Share of its cock that stands open. */
  readonly riserOpen: number;
}

/** Gauge, pump and vent on a hose: on the renewal tee's bench cap, on the house end of the line, or on neither. */
export interface TestSetState {
  readonly on: 'bench' | 'line' | null;
  readonly ventOpen: number;
  readonly pumpUntilS: number;
  readonly strokes: number;
}

export type Ending =
  | { readonly kind: 'complete' }
  | { readonly kind: 'referred'; readonly reason: string }
  | { readonly kind: 'isolated' }
  | { readonly kind: 'hurt'; readonly cause: string };
