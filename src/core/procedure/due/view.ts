import type {
  Action,
  Fact,
  HoldPointId,
  Job,
  KitKind,
  LeakPlace,
  LookPlace,
  SiteTask,
} from '../../rig/index.ts';
import { latest } from '../recall.ts';
import type { Limits } from '../settings.ts';
import type { ProcedureValue } from '../types.ts';
import { evidenceOf } from '../evidence/index.ts';
import { tell, type Told } from '../told.ts';
import type { DueReason } from './reasons.ts';

/** The parts of the rig a coach looks at: what stands where, as a crew can see and feel it. */
export interface DueRig {
  readonly kit: Readonly<
    Record<
      string,
      {
        readonly id: string;
        readonly kind: KitKind;
        readonly stamped: string | null;
        readonly rejected: boolean;
        readonly inspected: boolean;
        readonly where: string;
        readonly sealant: boolean;
      }
    >
  >;
  readonly site: {
    readonly done: Readonly<Partial<Record<SiteTask, number>>>;
    readonly cleaned: Readonly<Record<string, boolean>>;
    readonly marks: Readonly<Partial<Record<string, number>>>;
    readonly zeroed: Readonly<Partial<Record<string, boolean>>>;
    readonly bonded: { readonly tee: boolean; readonly service: boolean };
    readonly record: Readonly<Record<string, string>>;
  };
  readonly plug: { readonly at: string; readonly turnsBack: number; readonly broken: boolean };
  readonly tee: {
    readonly at: string;
    readonly turnsBack: number;
    readonly broken: boolean;
    readonly trim: string;
    readonly filed: boolean;
  };
  readonly branch: { readonly cut: string; readonly purged: boolean; readonly capped: boolean };
  readonly seatRing: { readonly piece: string | null };
  readonly collar: {
    readonly gasket: string | null;
    readonly collar: string | null;
    readonly bolts: readonly [number, number];
  };
  readonly saddle: { readonly on: string; readonly cradles: readonly string[] };
  readonly chains: readonly {
    readonly piece: string | null;
    readonly hooked: boolean;
    readonly left: number;
    readonly right: number;
    readonly taps: number;
  }[];
  readonly stack: readonly { readonly id: string; readonly kind: KitKind }[];
  readonly valve: { readonly openRad: number };
  readonly testHead: { readonly ventOpen: number };
  readonly bleed: { readonly openRad: number };
  readonly hose: string;
  readonly rod: {
    readonly tip: string | null;
    readonly load: string | null;
    readonly travelM: number;
    readonly held: boolean;
    readonly collarTravelM: number | null;
    readonly engaged: string | null;
  };
  readonly stopper: { readonly at: string; readonly torqueNm: number };
  readonly keeper: { readonly at: string; readonly engagedTurns: number; readonly torqueNm: number };
  readonly closing: { readonly at: string; readonly engagedTurns: number; readonly torqueNm: number };
  readonly renewal: {
    readonly at: string;
    readonly engagedTurns: number;
    readonly threadFound: boolean;
    readonly plug: {
      readonly at: string;
      readonly engagedTurns: number;
      readonly torqueNm: number;
      readonly threadFound: boolean;
    };
  };
  readonly line: {
    readonly laid: boolean;
    readonly cap: string | null;
    readonly tieIn: string | null;
    readonly riser: string | null;
    readonly riserOpen: number;
  };
  readonly testSet: { readonly on: string | null; readonly ventOpen: number };
  readonly ending: unknown;
}

/** A run as the coach needs it; any run is one. */
export interface DueRun {
  readonly scenario: {
    readonly kind: 'job' | 'drill';
    readonly job: Job;
    readonly limits: Limits;
    readonly holdPoints: readonly { readonly id: HoldPointId }[];
  };
  readonly rig: DueRig;
  readonly facts: readonly Fact[];
  readonly procedure: ProcedureValue;
  readonly clockS: number;
}

/** What the instruments show now, where the coach may see them. */
export interface DueReadings {
  readonly headGaugePa: number | null;
  readonly bleedHeard: boolean;
  /** Push felt on the rod, N upward; null while no barrel is on. */
  readonly rodFeltN: number | null;
}

/** One thing that could be done next, with its reason. */
export interface Offer {
  readonly why: DueReason;
  readonly holdPoint: HoldPointId | null;
  readonly action: Action | null;
  /** Seconds to wait where waiting is the thing to do. */
  readonly waitS: number | null;
}

/** What the stages' advice is written against. */
export interface DueView extends Omit<DueRun, 'scenario'> {
  readonly job: Job;
  readonly limits: Limits;
  readonly told: Told;
  readonly readings: DueReadings | null;
  readonly could: (action: Action) => boolean;
}

export function viewOf(
  run: DueRun,
  could: (action: Action) => boolean,
  readings: DueReadings | null,
): DueView {
  const { job, limits } = run.scenario;
  const { rig, facts, procedure, clockS } = run;
  const told = { ...tell(facts, limits, job), nowS: clockS };
  return { rig, facts, procedure, clockS, job, limits, told, readings, could };
}

/** Offers an action. */
export function offer(why: DueReason, action: Action, holdPoint: HoldPointId | null = null): Offer {
  return { why, holdPoint, action, waitS: null };
}

/** Offers to let time pass. */
export function waitFor(why: DueReason, waitS: number, holdPoint: HoldPointId | null = null): Offer {
  return { why, holdPoint, action: null, waitS: Math.max(1, waitS) };
}

/** Offers the signature where the evidence is there, and its withdrawal where it stands without. */
export function* signing(view: DueView, id: HoldPointId): Generator<Offer> {
  const state = view.procedure.holds[id];
  if (state === 'passed' || state === 'missed') return;
  const { met } = evidenceOf(id, view.told);
  if (met && state === 'open') yield offer('signHoldPoint', { kind: 'sign', holdPoint: id }, id);
  if (!met && state === 'signed') yield offer('withdrawSignature', { kind: 'withdraw', holdPoint: id }, id);
}

/** Requirements of a hold point that are still wanting, by name. */
export function wanting(view: DueView, id: HoldPointId): ReadonlySet<string> {
  return new Set(evidenceOf(id, view.told).items.flatMap((one) => (one.met ? [] : [one.id])));
}

/** The piece of a kind to take: right stamp, not rejected, on the board if one is. */
export function pick(view: DueView, kind: KitKind): string | null {
  const { mainNps, teeSize } = view.job.workpiece;
  const right = Object.values(view.rig.kit).filter((piece) => {
    if (piece.kind !== kind || piece.rejected) return false;
    const need =
      kind === 'cradleBlock'
        ? mainNps
        : kind === 'serviceCap' || kind === 'tieIn'
          ? view.job.system.service.nps
          : teeSize;
    return piece.stamped === null || piece.stamped === need;
  });
  return (right.find((piece) => piece.where === 'board') ?? right[0])?.id ?? null;
}

/** Offers to put the piece of a kind where it belongs. */
export function* place(view: DueView, why: DueReason, kind: KitKind): Generator<Offer> {
  const piece = pick(view, kind);
  if (piece !== null) yield offer(why, { kind: 'piece.place', piece, holdBack: true });
}

/** Offers to take the piece of a kind off. */
export function* takeOff(view: DueView, why: DueReason, kind: KitKind): Generator<Offer> {
  const piece = Object.values(view.rig.kit).find((p) => p.kind === kind && p.where === 'rig');
  if (piece) yield offer(why, { kind: 'piece.remove', piece: piece.id, holdBack: true });
}

/** Offers a site task that has not been done. */
export function* task(view: DueView, name: SiteTask): Generator<Offer> {
  if (view.rig.site.done[name] === undefined) yield offer('siteTask', { kind: 'site.do', task: name });
}

/** Offers a look that has not been taken (since a time, s). */
export function* look(view: DueView, at: LookPlace, sinceS = 0): Generator<Offer> {
  const seen = latest(view.facts, 'looked', (f) => f.at === at && f.saw.visible && f.atS >= sinceS);
  if (!seen) yield offer('look', { kind: 'look', at });
}

/** Offers leak fluid where none was watched long enough since a time, s. */
export function* fluid(view: DueView, at: LeakPlace, sinceS: number, watchS: number): Generator<Offer> {
  const seen = latest(
    view.facts,
    'leak.looked',
    (f) => f.at === at && f.atS >= sinceS && f.bubbles === 'none' && f.watchS >= view.limits.fluidWatchS,
  );
  if (!seen) {
    const longS = Math.max(watchS, view.limits.fluidWatchS);
    yield offer('leakFluid', { kind: 'leakFluid.apply', at, watchS: longS });
  }
}

/** Time of the last fact of a kind, s; 0 where there is none. */
export function lastS(view: DueView, kind: Fact['fact']): number {
  return latest(view.facts, kind)?.atS ?? 0;
}
