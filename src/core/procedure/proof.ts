import { PSI_PA } from '../units/index.ts';
import { lastTelling } from './leakFluid.ts';
import { type FactOf, kindOf, latest } from './recall.ts';
import { topOf } from './standing.ts';
import { item, type EvidenceItem, type Told } from './told.ts';
import { OPEN_RAD, SHUT_RAD, type Fact, type KitKind, type LeakPlace, type TeeSize } from '../rig/index.ts';

/**
 * The proof of a chamber: low stage, hold at the main's pressure, leak fluid, the valve's own seat, and the vented
 * chamber watched for a rise. The first stands on the boss, the second on the coupling.
 *
 * Seat test: gas above the shut ball is let go, then shared out again, so the reading must come back to
 * p(V − Vₐ)/V. Volumes in m³ of what the test stands on (assumed; they are the rig's own).
 */
export interface ProofChamber {
  readonly seat: 'tee' | 'coupling';
  readonly wholeM3: number;
  readonly aboveBallM3: number;
  readonly fluidAt: readonly LeakPlace[];
}

export const firstChamber: ProofChamber = {
  seat: 'tee',
  wholeM3: 1.32e-3,
  aboveBallM3: 0.31e-3,
  fluidAt: ['seat', 'valveJoint', 'topJoint'],
};
/** The chamber on the renewal tee, proved with the upper spool on that its keeper will need. */
export const newTeeChamber: ProofChamber = {
  seat: 'tee',
  wholeM3: 2.004e-3,
  aboveBallM3: 0.994e-3,
  fluidAt: ['seat', 'valveJoint', 'spoolJoint', 'topJoint'],
};
/**
 * What the second chamber holds, m³, with the gas in the cut tee, whose branch stands open in it: the larger the tee, the
 * more its metal takes up.
 */
const secondWholeM3: Readonly<Record<TeeSize, number>> = { '3/4': 2.47e-3, '1': 2.45e-3, '1-1/4': 2.4e-3 };

/** The chamber on the coupling, with a tee of this size in it. */
export function secondChamber(teeSize: TeeSize): ProofChamber {
  return {
    seat: 'coupling',
    wholeM3: secondWholeM3[teeSize],
    aboveBallM3: 0.994e-3,
    fluidAt: ['seat', 'spoolJoint', 'valveJoint', 'topJoint'],
  };
}

interface HeadRead {
  readonly index: number;
  readonly atS: number;
  readonly readingGaugePa: number;
}

/** One division of a 100 psi gauge, Pa. */
const GAUGE_DIVISION_PA = PSI_PA;
/** Reading at which a vented head gauge counts as down, Pa gauge. */
const DOWN_GAUGE_PA = GAUGE_DIVISION_PA;

const voidingPieces: ReadonlySet<KitKind> = new Set([
  'seatRing', 'saddle', 'cradleBlock', 'chain', 'isolationValve', 'lowerSpool', 'upperSpool', 'cupGasket', 'splitCollar',
]); // prettier-ignore

/** Whether this fact takes back a proof made before it: work on anything that holds the pressure. */
export function voidsProof(fact: Fact, told: Pick<Told, 'job'>): boolean {
  switch (fact.fact) {
    case 'tensioner.turned':
    case 'chain.tapped':
    case 'chain.released':
    case 'collarBolt.turned':
    case 'saddle.lifted':
      return true;
    case 'joint.turned':
      return fact.joint !== 'tee' && fact.joint !== 'keeper' && fact.joint !== 'plug';
    case 'piece.placed':
    case 'piece.removed': {
      const kind = kindOf(told.job, fact.piece);
      return kind !== null && voidingPieces.has(kind);
    }
    default:
      return false;
  }
}

/** Pumping begun, or ended: strokes take their time, and are told with their pressure when they are done. */
function pumps(fact: Fact): boolean {
  return fact.fact === 'pumped' || (fact.fact === 'done' && fact.action.kind === 'pump.stroke');
}

/** Facts after which a settled reading must be waited for again. */
function disturbs(fact: Fact): boolean {
  return (
    pumps(fact) ||
    fact.fact === 'valve.turned' ||
    fact.fact === 'vent.turned' ||
    fact.fact === 'piece.placed' ||
    fact.fact === 'piece.removed' ||
    fact.fact === 'relief.lifted'
  );
}

/** The requirements of a chamber proof, judged on what was read and seen after the last work that voids it. */
export function proofItems(told: Told, chamber: ProofChamber): readonly EvidenceItem[] {
  const from = startOf(told, chamber);
  const reads = headReads(told, from);
  const hold = bestHold(told, reads);
  return [
    lowStage(told, reads),
    ...holdItems(told, hold),
    ...fluidItems(told, chamber, from),
    seatTest(told, chamber, reads),
    riseItem('rise', told, reads, told.facts.length),
  ];
}

/** Before pumping: the chamber shut and watched, so that a weeping bulkhead is not hidden by the test's own air. */
export function riseBeforePumping(told: Told, chamber: ProofChamber): EvidenceItem {
  const from = startOf(told, chamber);
  const reads = headReads(told, from);
  const pumpedAt = told.facts.findIndex((fact, i) => i >= from && pumps(fact));
  return riseItem('riseBefore', told, reads, pumpedAt < 0 ? told.facts.length : pumpedAt);
}

/**
 * How far above the main, as it had last been read, a chamber was pumped at most: true pressures at the pump when each
 * lot of strokes was done; null where it was never pumped. A main that nobody read is taken for `unreadGaugePa`. What the main does afterwards takes nothing back.
 */
export function pumpedOverMain(
  told: Told,
  chamber: ProofChamber,
  unreadGaugePa: number,
): { readonly highestGaugePa: number; readonly mainGaugePa: number } | null {
  let most: { readonly highestGaugePa: number; readonly mainGaugePa: number } | null = null;
  told.facts.forEach((fact, i) => {
    if (fact.fact !== 'pumped' || told.stood[i]?.saddleOn !== chamber.seat) return;
    const mainGaugePa = mainReadBefore(told, i) ?? unreadGaugePa;
    const over = fact.headGaugePa - mainGaugePa;
    if (most === null || over > most.highestGaugePa - most.mainGaugePa)
      most = { highestGaugePa: fact.headGaugePa, mainGaugePa };
  });
  return most;
}

/** Index of the first fact that can count: after the last work on what holds the pressure. */
function startOf(told: Told, chamber: ProofChamber): number {
  for (let i = told.facts.length - 1; i >= 0; i -= 1) {
    const fact = told.facts[i];
    if (!fact) continue;
    if (voidsProof(fact, told)) return i + 1;
    if (told.stood[i]?.saddleOn !== chamber.seat) return i + 1;
  }
  return 0;
}

function headReads(told: Told, from: number): readonly HeadRead[] {
  const reads: HeadRead[] = [];
  for (let i = from; i < told.facts.length; i += 1) {
    const fact = told.facts[i];
    if (fact?.fact !== 'gauge.read' || fact.gauge !== 'head') continue;
    const standing = told.stood[i];
    if (!standing || topOf(standing) !== 'testHead' || !valveOpen(fact) || fact.under.ventOpen > 0) continue;
    reads.push({ index: i, atS: fact.atS, readingGaugePa: fact.readingGaugePa });
  }
  return reads;
}

function valveOpen(fact: FactOf<'gauge.read'>): boolean {
  return fact.under.valveOpenRad >= OPEN_RAD;
}

function lowStage(told: Told, reads: readonly HeadRead[]): EvidenceItem {
  const [low, high] = told.limits.lowStageGaugePa;
  const read = reads.find((r) => r.readingGaugePa >= low && r.readingGaugePa <= high);
  return item('lowStage', read !== undefined, {
    readingGaugePa: read?.readingGaugePa ?? 0,
    lowGaugePa: low,
    highGaugePa: high,
  });
}

interface Hold {
  readonly startGaugePa: number;
  readonly endGaugePa: number;
  readonly endS: number;
  readonly heldS: number;
  readonly settledS: number;
  readonly mainGaugePa: number;
}

/** The hold that comes nearest to what is asked: longest of those at pressure, settled and undisturbed. */
function bestHold(told: Told, reads: readonly HeadRead[]): Hold | null {
  let best: Hold | null = null;
  let bestRank = -1;
  for (const start of reads) {
    const mainGaugePa = mainReadBefore(told, start.index);
    const over = start.readingGaugePa - (mainGaugePa ?? Number.MAX_VALUE);
    if (mainGaugePa === null || over < 0 || over > told.limits.overMainPa) continue;
    const settledS = start.atS - lastDisturbanceS(told, start.index);
    const until = nextDisturbance(told, start.index);
    for (const end of reads) {
      if (end.index <= start.index || end.index >= until) continue;
      const hold: Hold = {
        startGaugePa: start.readingGaugePa,
        endGaugePa: end.readingGaugePa,
        endS: end.atS,
        heldS: end.atS - start.atS,
        settledS,
        mainGaugePa,
      };
      const rank = holdRank(told, hold);
      if (rank >= bestRank) {
        best = hold;
        bestRank = rank;
      }
    }
  }
  return best;
}

function holdRank(told: Told, hold: Hold): number {
  const { settleS, holdS, dropPa } = told.limits;
  const long = hold.heldS >= holdS ? 4 : 0;
  const settled = hold.settledS >= settleS ? 2 : 0;
  const tight = hold.startGaugePa - hold.endGaugePa <= dropPa ? 1 : 0;
  return long + settled + tight;
}

function holdItems(told: Told, hold: Hold | null): readonly EvidenceItem[] {
  const { settleS, holdS, dropPa, proofAgeS, overMainPa } = told.limits;
  if (!hold) {
    const none = { holdS, settleS, dropLimitPa: dropPa };
    return ['atPressure', 'settled', 'held', 'noDrop', 'fresh'].map((id) => item(id, false, none));
  }
  const dropGaugePa = hold.startGaugePa - hold.endGaugePa;
  const laterMain = told.facts.some(
    (f) =>
      f.fact === 'gauge.read' &&
      f.gauge === 'main' &&
      f.atS > hold.endS &&
      f.readingGaugePa > hold.startGaugePa,
  );
  return [
    item('atPressure', !laterMain, {
      readingGaugePa: hold.startGaugePa,
      mainGaugePa: hold.mainGaugePa,
      overMainPa,
    }),
    item('settled', hold.settledS >= settleS, { settledS: hold.settledS, settleS }),
    item('held', hold.heldS >= holdS, { heldS: hold.heldS, holdS }),
    item('noDrop', dropGaugePa <= dropPa, { dropPa: dropGaugePa, dropLimitPa: dropPa }),
    item('fresh', told.nowS - hold.endS <= proofAgeS, { ageS: told.nowS - hold.endS, proofAgeS }),
  ];
}

/** At each joint no bubbles, watched long enough and at the main's pressure: a low stage alone proves no joint. */
function fluidItems(told: Told, chamber: ProofChamber, from: number): readonly EvidenceItem[] {
  const { fluidWatchS } = told.limits;
  const leastGaugePa = (atS: number): number => {
    const main = latest(told.facts, 'gauge.read', (f) => f.gauge === 'main' && f.atS <= atS);
    return main === null ? Number.MAX_VALUE : main.readingGaugePa - GAUGE_DIVISION_PA;
  };
  return chamber.fluidAt.map((place) => {
    const looks = told.facts.flatMap((fact, i) =>
      i >= from && fact.fact === 'leak.looked' && fact.at === place && topOf(told.stood[i]) === 'testHead'
        ? [fact]
        : [],
    );
    const last = lastTelling(
      looks,
      (look) => look.watchS >= fluidWatchS && look.pressureGaugePa >= leastGaugePa(look.atS),
    );
    return item(`fluid.${place}`, last !== null && last.bubbles === 'none', {
      looked: looks.length > 0 ? 1 : 0,
      pressureGaugePa: last?.pressureGaugePa ?? 0,
      watchS: last?.watchS ?? 0,
      fluidWatchS,
    });
  });
}

/** The reading must come back to p(V − Vₐ)/V when the chamber above the ball was emptied and joined again. */
function seatTest(told: Told, chamber: ProofChamber, reads: readonly HeadRead[]): EvidenceItem {
  const share = (chamber.wholeM3 - chamber.aboveBallM3) / chamber.wholeM3;
  let result = item('seatTest', false, { share, tolerancePa: told.limits.seatTestPa });
  for (const before of reads) {
    if (before.readingGaugePa < told.limits.lowStageGaugePa[1]) continue;
    const after = rejoinedAfter(told, before.index, reads);
    if (!after) continue;
    const expectedGaugePa = before.readingGaugePa * share;
    const offPa = after.readingGaugePa - expectedGaugePa;
    result = item('seatTest', Math.abs(offPa) <= told.limits.seatTestPa, {
      beforeGaugePa: before.readingGaugePa,
      expectedGaugePa,
      readingGaugePa: after.readingGaugePa,
      tolerancePa: told.limits.seatTestPa,
    });
  }
  return result;
}

/** The first reading after shut – vented – vent shut – valve open, following a reading without anything between. */
function rejoinedAfter(told: Told, from: number, reads: readonly HeadRead[]): HeadRead | null {
  let step: 'before' | 'shut' | 'vented' | 'ready' | 'joined' = 'before';
  for (let i = from + 1; i < told.facts.length; i += 1) {
    const fact = told.facts[i];
    if (!fact) continue;
    if (pumps(fact)) return null;
    if (fact.fact === 'vent.turned') {
      if (fact.open > 0 && step !== 'shut' && step !== 'vented') return null;
      if (fact.open > 0) step = 'vented';
      else if (step === 'vented') step = 'ready';
    }
    if (fact.fact === 'valve.turned') {
      if (fact.openRad <= SHUT_RAD && step === 'before') step = 'shut';
      else if (fact.openRad > SHUT_RAD && (step === 'shut' || step === 'vented')) return null;
      else if (fact.openRad >= OPEN_RAD && step === 'ready') step = 'joined';
    }
    const read = reads.find((r) => r.index === i);
    if (read && step === 'before') return null;
    if (read && step === 'joined') return read;
  }
  return null;
}

/** Vented, shut and watched from a reading near zero: the last full watch before `before`, else the longest. */
function riseItem(id: string, told: Told, reads: readonly HeadRead[], before: number): EvidenceItem {
  const { riseS, risePa } = told.limits;
  let result = item(id, false, { watchedS: 0, riseS, riseLimitPa: risePa });
  let longestS = 0;
  for (const end of reads) {
    if (end.index >= before) continue;
    const shutS = lastDisturbanceS(told, end.index);
    const base = reads.find((r) => r.atS >= shutS && r.index < end.index && r.atS < end.atS);
    const baseGaugePa = base?.readingGaugePa ?? 0;
    const watchedS = end.atS - (base ? base.atS : shutS);
    if (baseGaugePa > DOWN_GAUGE_PA || watchedS < Math.min(longestS, riseS)) continue;
    longestS = watchedS;
    const risenPa = end.readingGaugePa - baseGaugePa;
    result = item(id, watchedS >= riseS && risenPa <= risePa, {
      watchedS,
      riseS,
      risePa: risenPa,
      riseLimitPa: risePa,
    });
  }
  return result;
}

function mainReadBefore(told: Told, index: number): number | null {
  for (let i = index; i >= 0; i -= 1) {
    const fact = told.facts[i];
    if (fact?.fact === 'gauge.read' && fact.gauge === 'main') return fact.readingGaugePa;
  }
  return null;
}

function lastDisturbanceS(told: Told, index: number): number {
  for (let i = index; i >= 0; i -= 1) {
    const fact = told.facts[i];
    if (fact && disturbs(fact)) return fact.atS;
  }
  return 0;
}

function nextDisturbance(told: Told, index: number): number {
  for (let i = index + 1; i < told.facts.length; i += 1) {
    const fact = told.facts[i];
    if (fact && disturbs(fact)) return i;
  }
  return told.facts.length;
}
