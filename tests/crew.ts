import { isDeepStrictEqual } from 'node:util';
import { constants } from '../src/core/catalogue/index.ts';
import {
  elevations,
  geometryOf,
  squeezeTorqueNm,
  stopperRubber,
  stopperSize,
  tipLengthM,
  type Action,
  type Defects,
  type Fact,
  type Hindrance,
  type KitKind,
  type MarkPlace,
} from '../src/core/rig/index.ts';
import {
  advance,
  attempt,
  begin,
  read,
  trueFlows,
  truePressures,
  type Readings,
  type RecordEntry,
  type RunState,
} from '../src/core/run/index.ts';
import { book } from '../src/core/run/settle.ts';
import { cutAt } from '../src/core/run/step.ts';
import type { Scenario } from '../src/core/scenario/index.ts';
import { psi } from '../src/core/units/index.ts';
import { jobStages, type StageName } from './jobStages.ts';
import { exercise } from './scenario/exercise.ts';

export type FactName = Fact['fact'];
export type FactOf<K extends FactName> = Extract<Fact, { readonly fact: K }>;
type Mutable<T> = { -readonly [P in keyof T]: T[P] extends object ? Mutable<T[P]> : T[P] };
export type Job = Mutable<Scenario['job']>;

const QUARTER_RAD = Math.PI / 2;

/** A hand was hindered where the test's crew meant to go on. */
export class Hindered extends Error {
  constructor(
    readonly action: Action,
    readonly hindrance: Hindrance,
  ) {
    super(`${JSON.stringify(action)}: ${hindrance}`);
  }
}

/**
 * A crew for tests: plays acts on a run, each taking the time hands need, and says what happened since. It knows the
 * truth of the gas, which a crew in the field does not: tests hold the model against it.
 */
export class Crew {
  run: RunState;
  readonly entries: RecordEntry[] = [];
  /** How many stages of the sound sequence have been played. */
  stagesDone = 0;
  readonly #taken = new Map<KitKind, string>();

  constructor(scenario: Scenario) {
    this.run = begin(scenario);
  }

  /** A second crew at the same point of the same job, to try another way from there. */
  copy(): Crew {
    const other = new Crew(this.scenario);
    other.run = this.run;
    other.stagesDone = this.stagesDone;
    other.entries.push(...this.entries);
    for (const [kind, id] of this.#taken) other.takes(kind, id);
    return other;
  }

  /** Tries an act; null when it was done, with the time it takes. */
  tries(action: Action): Hindrance | null {
    const attempted = attempt(this.run, action);
    if ('hindrance' in attempted) return attempted.hindrance;
    this.entries.push({ atS: this.run.clockS, action });
    this.run = advance(attempted.run, attempted.run.busyUntilS);
    return null;
  }

  /** Does these one after the other; throws Hindered where a hand could not. */
  does(...actions: readonly Action[]): this {
    for (const action of actions) {
      const hindrance = this.tries(action);
      if (hindrance !== null) throw new Hindered(action, hindrance);
    }
    return this;
  }

  /** Begins an act and returns with the clock where it was begun: what follows is played out by waiting. */
  begins(action: Action): this {
    const attempted = attempt(this.run, action);
    if ('hindrance' in attempted) throw new Hindered(action, attempted.hindrance);
    this.entries.push({ atS: this.run.clockS, action });
    this.run = attempted.run;
    return this;
  }

  waits(durationS: number): this {
    this.run = advance(this.run, this.run.clockS + durationS);
    return this;
  }

  /** Waits by whole seconds until the readings say so, at most so long, s. */
  waitsUntil(good: (readings: Readings) => boolean, mostS = 300): this {
    for (let waitedS = 0; waitedS < mostS && !good(this.reads); waitedS += 1) this.waits(1);
    return this;
  }

  /** Plays the sound sequence from where the job stands to the end of a stage. */
  upTo(stage: StageName): this {
    jobStages(this, stage);
    return this;
  }

  get scenario(): Scenario {
    return this.run.scenario;
  }

  get reads(): Readings {
    return read(this.run);
  }

  get clockS(): number {
    return this.run.clockS;
  }

  /** Facts of a kind since a time, s. */
  told<K extends FactName>(kind: K, sinceS = 0): readonly FactOf<K>[] {
    return this.run.facts.filter((fact): fact is FactOf<K> => fact.fact === kind && fact.atS >= sinceS);
  }

  /** The last fact of a kind; throws where nothing of the kind happened. */
  last<K extends FactName>(kind: K): FactOf<K> {
    const found = this.told(kind).at(-1);
    if (found === undefined) throw new Error(`Nothing of the kind ${kind} happened.`);
    return found;
  }

  /** True pressure of a cell, Pa gauge. */
  gaugePa(cell: string): number {
    return truePressures(this.run)[cell] ?? 0;
  }

  /** True flow of all links whose id begins so, kg/s, from → to. */
  kgPerS(link: string): number {
    return trueFlows(this.run)
      .filter((flow) => flow.id === link || flow.id.startsWith(`${link}.`))
      .reduce((sum, flow) => sum + flow.kgPerS, 0);
  }

  /** The run booked up to its clock: ledger and air of the hole else stand where the last natural step ended. */
  get #booked(): RunState {
    return book(this.run, cutAt(this.run, this.run.clockS));
  }

  /** Gas that has gone to a place since the start, kg. */
  lostKg(where: 'toHole' | 'throughBleed' | 'toService' | 'fromMain'): number {
    return this.#booked.ledger[`${where}Mol`] * constants.gasMolarMassKgPerMol.value;
  }

  get lelShare(): number {
    return this.#booked.air.gasFraction / this.scenario.job.site.lelFraction;
  }

  /** Takes this piece wherever the sound sequence would take the one of its kind that fits. */
  takes(kind: KitKind, id: string): this {
    this.#taken.set(kind, id);
    return this;
  }

  /** Id of the piece of this kind that fits the job (or was taken instead); the nth where there are several alike. */
  piece(kind: KitKind, nth = 0): string {
    const taken = this.#taken.get(kind);
    if (taken !== undefined) return taken;
    const { workpiece, system, kit } = this.scenario.job;
    const size =
      kind === 'cradleBlock'
        ? workpiece.mainNps
        : kind === 'serviceCap'
          ? system.service.nps
          : workpiece.teeSize;
    const found = kit
      .filter((k) => k.kind === kind && (k.stamped === undefined || k.stamped === size))
      .at(nth);
    if (found === undefined) throw new Error(`The board holds no ${kind} for this job.`);
    return found.id;
  }

  puts(kind: KitKind, nth = 0): this {
    return this.does({ kind: 'piece.place', piece: this.piece(kind, nth), holdBack: true });
  }

  takesOff(kind: KitKind, nth = 0): this {
    return this.does({ kind: 'piece.remove', piece: this.piece(kind, nth), holdBack: true });
  }

  marks(at: MarkPlace): this {
    return this.does({ kind: 'mark', at });
  }

  /** Isolation valve open by this share of a quarter turn more. */
  turnsValve(share: number): this {
    return this.does({ kind: 'valve.turn', angleRad: share * QUARTER_RAD });
  }

  opensValve(): this {
    return this.turnsValve(0.06).waits(3).turnsValve(0.25).waits(2).turnsValve(1);
  }

  shutsValve(): this {
    return this.turnsValve(-1);
  }

  opensBleed(share = 1): this {
    return this.does({ kind: 'bleed.turn', angleRad: share * QUARTER_RAD });
  }

  shutsBleed(): this {
    return this.does({ kind: 'bleed.turn', angleRad: -QUARTER_RAD });
  }

  /** Bleed open until quiet, a little longer, and shut again. */
  bleedsDown(): this {
    return this.opensBleed()
      .waitsUntil((readings) => !readings.bleedHeard, 120)
      .waits(8)
      .shutsBleed();
  }

  holdsRod(held = true): this {
    return this.does({ kind: 'rod.hold', held });
  }

  letsGoOfRod(): this {
    return this.holdsRod(false);
  }

  rodDown(lengthM = 0.5): this {
    return this.does({ kind: 'rod.move', lengthM });
  }

  rodUp(lengthM = 0.5): this {
    return this.does({ kind: 'rod.move', lengthM: -lengthM });
  }

  turnsRod(turns: number): this {
    return this.does({ kind: 'rod.turn', turns });
  }

  /** Strokes of the hand pump, ten at a time. */
  pumps(strokes: number): this {
    for (let left = strokes; left > 0; left -= 10) {
      this.does({ kind: 'pump.stroke', strokes: Math.min(10, left) });
    }
    return this;
  }

  /** Pumps stroke by stroke until the head's gauge reads so many psig, or no stroke raises it any more. */
  pumpsTo(psig: number): this {
    for (let strokes = 0; strokes < 80 && (this.reads.headGaugePa ?? 0) < psi(psig); strokes += 1)
      this.pumps(1);
    return this;
  }

  /** Test head on, vent shut, valve open: the whole assembly under test. */
  underTest(): this {
    return this.puts('testHead')
      .does({ kind: 'gauge.zero', gauge: 'head' }, { kind: 'vent.turn', open: -1 })
      .opensValve();
  }

  /** Vent open until the gauge is down and a little longer, then shut. */
  ventsDown(): this {
    this.does({ kind: 'vent.turn', open: 1 });
    this.waitsUntil(({ headGaugePa }) => (headGaugePa ?? 0) <= 0, 120).waits(10);
    return this.does({ kind: 'vent.turn', open: -1 });
  }

  /** Tip fitted, piece loaded, barrel on (with the upper spool where it needs height), rod held. */
  barrelOn(tip: 'socket' | 'stopperHolder', load: KitKind | null): this {
    const id = this.piece(tip);
    if (this.run.rig.rod.tip !== id) this.does({ kind: 'rod.fit', tip: id });
    if (load !== null) this.does({ kind: 'rod.load', piece: this.piece(load) });
    const barrel = { kind: 'piece.place', piece: this.piece('rodBarrel'), holdBack: true } as const;
    if (this.tries(barrel) === 'noHeadroom') this.puts('upperSpool').does(barrel);
    return this.holdsRod();
  }

  /** Depth collar clamped so that the stopper's washer comes to stand so far below the port, m. */
  clampsCollar(belowPortM: number): this {
    const { rig } = this.run;
    const upZM = elevations(rig)?.rodUpZM ?? 0;
    const travelM = upZM - tipLengthM(rig) - geometryOf(rig.job).portUndersideZM + belowPortM;
    return this.does({ kind: 'collar.set', travelM });
  }

  /** Inner rod turned until the stopper carries this torque, N·m, without the drag felt besides. */
  squeezesTo(torqueNm: number): this {
    const { rig } = this.run;
    const size = stopperSize(rig);
    if (size === null) throw new Error('There is no stopper to squeeze.');
    const rubber = stopperRubber(size, rig.job.workpiece.teeSize);
    let [low, high] = [0, 30];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (squeezeTorqueNm(rubber, middle) < torqueNm) low = middle;
      else high = middle;
    }
    return this.does({ kind: 'innerRod.turn', turns: high - rig.stopper.squeezeTurns });
  }

  /** Both tensioners of both chains by so many turns past where they stand, left and right. */
  drawsUp(leftTurns: number, rightTurns = leftTurns): this {
    for (const chain of [0, 1]) {
      if (leftTurns !== 0) this.does({ kind: 'tensioner.turn', chain, side: 'left', turns: leftTurns });
      if (rightTurns !== 0) this.does({ kind: 'tensioner.turn', chain, side: 'right', turns: rightTurns });
    }
    return this;
  }

  /** True where looking, in every way there is, leaves the run as it was to the last bit. */
  looksInVain(): boolean {
    const before = structuredClone(this.run);
    read(this.run);
    truePressures(this.run);
    trueFlows(this.run);
    return isDeepStrictEqual(before, this.run);
  }
}

/** A crew at the gate of the yard's exercise, with its job changed as the test asks. */
export function crewFor(...changes: readonly ((job: Job) => void)[]): Crew {
  const scenario = exercise();
  for (const change of changes) change(scenario.job);
  return new Crew(scenario);
}

/** A main at so many psig, ordered and tagged so. */
export const atPsig =
  (pressurePsig: number) =>
  (job: Job): void => {
    job.system.mainPressureGaugePa = psi(pressurePsig);
    job.system.orderPressureGaugePa = psi(pressurePsig);
  };

/** A piece of the kit with something wrong about it. */
export const spoilt =
  (id: string, defects: Defects) =>
  (job: Job): void => {
    const entry = job.kit.find((piece) => piece.id === id);
    if (entry === undefined) throw new Error(`The board holds no ${id}.`);
    entry.defects = defects;
  };
