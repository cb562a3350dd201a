import type {
  Action,
  DetectorPlace,
  GaugeName,
  HoldPointId,
  LeakPlace,
  LookPlace,
  Measure,
  OilPlace,
  RecordField,
  ReferReason,
  SiteTask,
} from './actions.ts';
import type { TroubleKind } from './troubles.ts';
import type { Ending } from './state.ts';

/**
 * What happened, past tense. Raised by the run at located times; read by procedure and judge. Where a fact is a
 * reading it carries both what was read and what was true. Pressures Pa gauge, torques N·m, lengths m, angles rad.
 */
export type Fact = { readonly atS: number } & FactBody;

export type FactBody =
  /** The hand did this (every accepted action, before its consequences). */
  | { readonly fact: 'done'; readonly action: Action }
  /** `found`: what came to light as the task was done; absent where nothing did. */
  | { readonly fact: 'site.done'; readonly task: SiteTask; readonly found?: readonly TroubleKind[] }
  /** Share of the bump gas that the display showed; absent where it showed all of it. */
  | { readonly fact: 'detector.bumped'; readonly passed: boolean; readonly shownShare?: number }
  | {
      readonly fact: 'detector.read';
      readonly where: DetectorPlace;
      readonly lelShare: number;
      readonly trueLelShare: number;
      readonly oxygenShare: number;
    }
  /** Range on the dial, Pa, where it is another than the kit's. */
  | { readonly fact: 'gauge.zeroed'; readonly gauge: GaugeName; readonly rangePa?: number }
  | {
      readonly fact: 'gauge.read';
      readonly gauge: GaugeName;
      readonly readingGaugePa: number;
      readonly trueGaugePa: number;
      readonly zeroed: boolean;
      readonly under: ProofConditions;
    }
  | { readonly fact: 'looked'; readonly at: LookPlace; readonly saw: Sight }
  | { readonly fact: 'listened'; readonly levelDb: number; readonly heard: boolean }
  | { readonly fact: 'measured'; readonly what: Measure; readonly readingM: number; readonly trueM: number }
  | { readonly fact: 'cleaned'; readonly at: string }
  | { readonly fact: 'oiled'; readonly at: OilPlace }
  /** What came off a piece by wiping it; empty where nothing did. */
  | { readonly fact: 'piece.cleaned'; readonly piece: string; readonly cameOff: readonly string[] }
  | { readonly fact: 'bleed.cleared'; readonly cameOut: boolean }
  | { readonly fact: 'marked'; readonly at: string }
  | {
      readonly fact: 'leak.looked';
      readonly at: LeakPlace;
      readonly bubbles: Bubbles;
      readonly gasMolPerS: number;
      readonly watchS: number;
      readonly pressureGaugePa: number;
    }
  | { readonly fact: 'piece.inspected'; readonly piece: string; readonly found: readonly string[] }
  | { readonly fact: 'piece.rejected'; readonly piece: string; readonly doubtful: boolean }
  | { readonly fact: 'piece.placed'; readonly piece: string; readonly fits: boolean }
  | {
      readonly fact: 'piece.removed';
      readonly piece: string;
      readonly pressureGaugePa: number;
      readonly thrustN: number;
      readonly gasMol: number;
    }
  /** A joint other than the meant one turned, for want of hold-back. */
  | { readonly fact: 'joint.turned'; readonly joint: string; readonly meant: string }
  | { readonly fact: 'chain.tapped'; readonly chain: number; readonly settledM: number }
  | {
      readonly fact: 'tensioner.turned';
      readonly chain: number;
      readonly side: 'left' | 'right';
      readonly turns: number;
      readonly torqueNm: number;
      readonly legForceN: number;
    }
  | { readonly fact: 'chain.released'; readonly forceN: number; readonly chamberGaugePa: number }
  | {
      readonly fact: 'valve.turned';
      readonly openRad: number;
      readonly differenceGaugePa: number;
      /** Torque on a handle that goes hard, N·m; absent where it turns freely. */
      readonly stiffNm?: number;
    }
  | { readonly fact: 'vent.turned'; readonly open: number; readonly aboveGaugePa: number }
  | { readonly fact: 'pumped'; readonly strokes: number; readonly headGaugePa: number }
  | {
      readonly fact: 'bleed.turned';
      readonly openRad: number;
      readonly aboveGaugePa: number;
      readonly puff: boolean;
      readonly levelDb: number;
      /** What came out beside plain gas with its smell. */
      readonly found?: readonly TroubleKind[];
    }
  /** The bleed hissed so that it could be heard, until now. */
  | { readonly fact: 'bleed.quiet'; readonly hissedS: number; readonly aboveGaugePa: number }
  | { readonly fact: 'rod.moved'; readonly travelM: number; readonly feltN: number }
  | { readonly fact: 'rod.engaged'; readonly with: string }
  | {
      readonly fact: 'rod.turned';
      readonly turns: number;
      readonly torqueNm: number;
      readonly turning: string;
    }
  | {
      readonly fact: 'rod.thrown';
      readonly thrustN: number;
      readonly pressureGaugePa: number;
      readonly energyJ: number;
    }
  | { readonly fact: 'rod.sank'; readonly travelM: number }
  /** What hung in the socket fell out of it; or the socket would not come off the head. */
  | { readonly fact: 'load.dropped'; readonly load: string }
  | { readonly fact: 'socket.stuck'; readonly on: string }
  | { readonly fact: 'rod.still'; readonly netN: number }
  | {
      readonly fact: 'plug.turned';
      readonly turnsBack: number;
      readonly torqueNm: number;
      readonly sinceMark: number;
      /** The wrench slipped on the plug's square. */
      readonly slipped?: boolean;
    }
  | {
      readonly fact: 'plug.free';
      readonly chamberClosed: boolean;
      readonly differenceGaugePa: number;
      readonly thrustN: number;
    }
  | {
      readonly fact: 'tee.turned';
      readonly turnsBack: number;
      readonly torqueNm: number;
      readonly heldBack: boolean;
    }
  | { readonly fact: 'tee.free'; readonly chamberClosed: boolean; readonly thrustN: number }
  | { readonly fact: 'tee.strained'; readonly turns: number }
  | {
      readonly fact: 'keeper.turned';
      readonly engagedTurns: number;
      readonly torqueNm: number;
      readonly heldBack: boolean;
      readonly gapM: number;
    }
  | {
      readonly fact: 'stopper.squeezed';
      readonly torqueNm: number;
      readonly turns: number;
      readonly inBore: boolean;
    }
  | { readonly fact: 'stopper.torn' }
  | { readonly fact: 'stopper.left'; readonly belowPortM: number; readonly torqueNm: number }
  | {
      readonly fact: 'stopper.slipped';
      readonly byM: number;
      readonly thrustN: number;
      readonly holdsN: number;
    }
  /** The keeper's stem stands on it and has pushed it down. */
  | { readonly fact: 'stopper.pushed'; readonly byM: number; readonly belowPortM: number }
  | { readonly fact: 'stopper.dropped'; readonly into: 'main' | 'tee' | 'valve' }
  | {
      readonly fact: 'closing.turned';
      readonly engagedTurns: number;
      readonly torqueNm: number;
      readonly crossed: boolean;
    }
  /** The renewal tee screwed in its coupling: how far its branch points off its heading by the mark on the rod, rad. */
  | {
      readonly fact: 'renewal.turned';
      readonly engagedTurns: number;
      readonly torqueNm: number;
      readonly crossed: boolean;
      readonly offHeadingRad: number;
      readonly trueOffHeadingRad: number;
      /** Turned back after it had been made up past hand-tight. */
      readonly backward: boolean;
    }
  | {
      readonly fact: 'newPlug.turned';
      readonly engagedTurns: number;
      readonly torqueNm: number;
      readonly crossed: boolean;
    }
  /** The stopper left its bore on the rod: what the gas still pushed it with. */
  | { readonly fact: 'stopper.drawn'; readonly differenceGaugePa: number; readonly thrustN: number }
  | { readonly fact: 'testSet.joined'; readonly to: 'bench' | 'line' | null }
  | {
      readonly fact: 'testSet.pumped';
      readonly strokes: number;
      readonly on: 'bench' | 'line';
      readonly gaugePa: number;
      /** The line is joined to a tee whose stopper is in: the test's air stands on it, N downward, and what holds it. */
      readonly onStopper: boolean;
      readonly thrustN: number;
      readonly holdsN: number;
    }
  | { readonly fact: 'testSet.vented'; readonly open: number; readonly gaugePa: number }
  | { readonly fact: 'temperature.read'; readonly readingK: number; readonly trueK: number }
  | { readonly fact: 'riser.turned'; readonly open: number; readonly gaugePa: number }
  | { readonly fact: 'riser.read'; readonly gasShare: number; readonly trueGasShare: number }
  | { readonly fact: 'collarBolt.turned'; readonly bolts: readonly [number, number] }
  | {
      readonly fact: 'branch.cut';
      readonly part: string;
      readonly pressureGaugePa: number;
      readonly bonded: boolean;
      /** What the saw brought to light. */
      readonly found?: readonly TroubleKind[];
    }
  /** Clamping the second end drew a spark: a voltage stands across the place of the cut. */
  | { readonly fact: 'bond.sparked' }
  | { readonly fact: 'gaugeRing.tried'; readonly passes: boolean; readonly sweptM: number }
  | { readonly fact: 'service.purged' }
  | { readonly fact: 'record.written'; readonly field: RecordField; readonly value: string }
  | { readonly fact: 'signed'; readonly holdPoint: HoldPointId }
  | { readonly fact: 'withdrawn'; readonly holdPoint: HoldPointId }
  /** The detector's alarm: 1 the low step, 2 the high one; 0 when it falls silent. */
  | { readonly fact: 'gas.alarm'; readonly step: 0 | 1 | 2; readonly lelShare: number }
  | { readonly fact: 'gas.flammable'; readonly lelShare: number; readonly nearReachM: number }
  | { readonly fact: 'gas.ignited'; readonly lelShare: number }
  | { readonly fact: 'relief.lifted'; readonly headGaugePa: number }
  | { readonly fact: 'relief.shut'; readonly headGaugePa: number }
  /** Gas began or ceased to blow freely into the hole (not through a bleed), kg/s. */
  | { readonly fact: 'blow.began'; readonly from: string; readonly kgPerS: number }
  | { readonly fact: 'blow.ended'; readonly from: string; readonly lostKg: number }
  | { readonly fact: 'saddle.lifted'; readonly chamberGaugePa: number; readonly forceN: number }
  | { readonly fact: 'referred'; readonly reason: ReferReason }
  | { readonly fact: 'ended'; readonly ending: Ending };

export type Bubbles = 'none' | 'fine' | 'steady' | 'blowing';

/** How the assembly stood when a gauge was read: what the reading is evidence of. */
export interface ProofConditions {
  readonly valveOpenRad: number;
  readonly ventOpen: number;
  readonly bleedOpenRad: number;
  readonly top: string | null;
  readonly saddleOn: 'board' | 'tee' | 'coupling';
}

/** What an eye finds; absent where it cannot be seen from there. */
export interface Sight {
  readonly visible: boolean;
  readonly face?: 'dirty' | 'sound' | 'pitted' | 'beyondUse';
  readonly wrap?: string;
  readonly wallSound?: boolean;
  readonly boreClear?: boolean;
  readonly plugIn?: boolean;
  readonly stopperSeen?: boolean;
  readonly stopperSquare?: boolean;
  readonly stopperBelowPortM?: number;
  readonly stopperDry?: boolean;
  readonly threadsSound?: boolean;
  readonly closingSquare?: boolean;
  readonly closingTurnsShown?: number;
  readonly chainsBear?: boolean;
  /** What is amiss there beyond the pieces. */
  readonly signs?: readonly TroubleKind[];
}
