import { faults, targetOf, type Fault, type Found, type Story } from '../faults/index.ts';
import type { HoldPointId, ReferReason } from '../rig/index.ts';
import { guards, latest } from '../procedure/index.ts';
import type { AbnormalConditionId } from './catalogue.ts';
import { layOutCase, type Case, type JudgedRun } from './case.ts';

/** An abnormal condition of one run, planted or the job's own, as it was met. Indexes are of the run's facts. */
export interface Condition {
  readonly id: AbnormalConditionId;
  /** With which fact the work it endangers began after it was there, or null. */
  readonly endangeredAt: number | null;
  /** With which fact it showed itself to the crew, or null. */
  readonly noticedAt: number | null;
  /** Answered rightly once it showed. */
  readonly answered: boolean;
  /** No blame for going on: every required reading was taken and hid it. */
  readonly excused: boolean;
  readonly numbers: Readonly<Record<string, number>>;
  readonly refer: readonly ReferReason[];
  /** Causes it shares with other findings. */
  readonly causes: readonly string[];
}

/** The abnormal conditions a run met, for whoever asks how they showed and what they endangered. */
export function conditionsMet(run: JudgedRun): readonly Condition[] {
  return conditionsIn(layOutCase(run));
}

let kept: { readonly judged: Case; readonly conditions: readonly Condition[] } | null = null;

/** The abnormal conditions that were really there: those that struck, and those the job came with. */
export function conditionsIn(judged: Case): readonly Condition[] {
  if (kept === null || kept.judged !== judged) kept = { judged, conditions: lookBack(judged) };
  return kept.conditions;
}

function lookBack(judged: Case): readonly Condition[] {
  const { scenario, run } = judged;
  const planted = run.struck.map(({ index, atS }) => {
    const { fault, on, severity } = scenario.faults[index];
    const found = { on: targetOf(faults[fault], scenario.job, on), severity: severity ?? 1 };
    return { fault: faults[fault], found, atS, index };
  });
  const known = new Set(planted.map(({ fault, found }) => `${fault.id}@${found.on ?? ''}`));
  const own = Object.values(faults).flatMap((fault) =>
    fault
      .foundIn(scenario.job)
      .filter((found) => !known.has(`${fault.id}@${found.on ?? ''}`))
      .map((found) => ({ fault, found, atS: 0, index: null })),
  );
  return [...planted, ...own].flatMap(({ fault, found, atS, index }) =>
    met(judged, fault, found, atS, index),
  );
}

function met(judged: Case, fault: Fault, found: Found, struckAtS: number, index: number | null): Condition[] {
  const { facts, limits, holds } = judged;
  const held = (id: HoldPointId): boolean =>
    holds.some((hold) => hold.id === id && (hold.given || hold.outcome === 'held'));
  const story: Story = { facts, job: judged.job, ...found, struckAtS, limits, held };
  const fromStart = index === null || judged.scenario.faults[index].when.trigger === 'start';
  const from = fromStart ? 0 : indexAfter(judged, struckAtS);
  const metFrom = fromStart ? 0 : indexOfPause(judged, from);
  const noticedAt = firstAt(facts, from, (f, i) => fault.feltBy(f, story, i));
  const goneAt =
    fault.goneWith === undefined
      ? null
      : firstAt(facts, from, (f, i) => fault.goneWith?.(f, story, i) === true);
  const begunAt = firstAt(facts, metFrom, (_f, i) => begins(judged, fault, story, i));
  const endangeredAt = goneAt !== null && begunAt !== null && goneAt < begunAt ? null : begunAt;
  // what had been gone past before the trainee took over is not theirs to answer for
  if (endangeredAt !== null && endangeredAt < judged.given.facts) return [];
  // an answer counts that came before the work it should have stopped
  const answering = endangeredAt === null ? story : { ...story, facts: facts.slice(0, endangeredAt + 1) };
  return [
    {
      id: fault.id,
      endangeredAt,
      noticedAt,
      answered: noticedAt !== null && fault.rightReaction(answering, noticedAt),
      excused: fault.id === 'pressureAboveRating' && readWithinRating(judged, endangeredAt),
      numbers: numbersOf(judged, fault),
      refer: fault.refer,
      causes: found.on === null ? fault.shares : [...fault.shares, `piece.${found.on}`],
    },
  ];
}

function begins(judged: Case, fault: Fault, story: Story, at: number): boolean {
  const { facts, limits, job } = judged;
  const fact = facts[at];
  const { holdPoints = [], work } = fault.endangers;
  if (work?.(fact, story, at) === true) return true;
  return holdPoints.some((id) => {
    const guard = guards[id];
    return (
      guard.kinds.includes(fact.fact) && guard.begins(fact, { facts: facts.slice(0, at + 1), limits, job })
    );
  });
}

function firstAt(
  facts: Case['facts'],
  from: number,
  is: (fact: Case['facts'][number], at: number) => boolean,
): number | null {
  for (let i = from; i < facts.length; i += 1) if (is(facts[i], i)) return i;
  return null;
}

/** Index of the first fact after a time; what set a fault off is not yet work that it endangers. */
function indexAfter({ facts }: Case, atS: number): number {
  const index = facts.findIndex((fact) => fact.atS > atS);
  return index < 0 ? facts.length : index;
}

/** Nobody has his hands full for longer than this without looking up, s (assumed). */
const HANDS_FULL_MOST_S = 600;

/**
 * Index of the first pause from there on: a piece comes off, or ten minutes have gone. What befalls a crew with its
 * hands full is met when it next looks up; only work from there on is begun in spite of it.
 */
function indexOfPause({ facts }: Case, from: number): number {
  const beganS = facts[from]?.atS ?? 0;
  const pause = facts.findIndex(
    (f, i) => i >= from && (f.fact === 'piece.removed' || f.atS > beganS + HANDS_FULL_MOST_S),
  );
  return pause < 0 ? facts.length : pause;
}

function readWithinRating({ facts, job }: Case, until: number | null): boolean {
  const before = facts.slice(0, until ?? facts.length);
  const read = latest(before, 'gauge.read', (f) => f.gauge === 'main' && f.zeroed);
  return read !== null && read.readingGaugePa <= job.system.ratingGaugePa;
}

function numbersOf({ job }: Case, { id }: Fault): Readonly<Record<string, number>> {
  if (id !== 'pressureAboveRating') return {};
  return { mainGaugePa: job.system.mainPressureGaugePa, ratingGaugePa: job.system.ratingGaugePa };
}
