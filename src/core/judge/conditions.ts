import type { Fact, Job, ReferReason } from '../rig/index.ts';
import { kindOf, latest } from '../procedure/index.ts';
import type { AbnormalConditionId } from './catalogue.ts';
import type { Case } from './case.ts';
import { reasonOf, SEIZED_NM } from './ending.ts';

/** A real abnormal condition of a job: what it endangers, how it shows, and what answers it. */
export interface Condition {
  readonly id: AbnormalConditionId;
  readonly present: (job: Job) => boolean;
  /** Index of the fact with which the work it endangers began, or null. */
  readonly endangeredAt: (judged: Case) => number | null;
  /** Index of the fact with which it showed itself to the crew, or null. */
  readonly noticedAt: (judged: Case) => number | null;
  readonly answered: (judged: Case) => boolean;
  /** No blame for going on: every required reading was taken and hid it. */
  readonly excused: (judged: Case) => boolean;
  readonly numbers: (judged: Case) => Readonly<Record<string, number>>;
  /** Causes it shares with other findings. */
  readonly causes: (judged: Case) => readonly string[];
}

type Plain = Pick<Condition, 'id' | 'present' | 'endangeredAt' | 'noticedAt' | 'answered'> &
  Partial<Pick<Condition, 'excused' | 'numbers' | 'causes'>>;

function condition(plain: Plain): Condition {
  return { excused: () => false, numbers: () => ({}), causes: () => [], ...plain };
}

function indexOf(judged: Case, is: (fact: Fact) => boolean): number | null {
  const index = judged.facts.findIndex(is);
  return index < 0 ? null : index;
}

function begunOrNull(judged: Case, id: 'H1' | 'H2' | 'H3' | 'H4' | 'H7'): number | null {
  const index = judged.begun(id);
  return index < judged.facts.length ? index : null;
}

const referredFor = (judged: Case, ...reasons: ReferReason[]): boolean => {
  const reason = reasonOf(judged);
  return reason !== null && reasons.includes(reason);
};

const placed = (judged: Case, kind: string): number | null =>
  indexOf(judged, (f) => f.fact === 'piece.placed' && kindOf(judged.job, f.piece) === kind);

const mainRead = (f: Fact): boolean =>
  f.fact === 'gauge.read' && (f.gauge === 'main' || f.gauge === 'second');

const conditions: readonly Condition[] = [
  condition({
    id: 'pressureAboveRating',
    present: (job) => job.system.mainPressureGaugePa > job.system.ratingGaugePa,
    endangeredAt: (judged) => begunOrNull(judged, 'H1'),
    noticedAt: (judged) =>
      indexOf(
        judged,
        (f) => mainRead(f) && f.fact === 'gauge.read' && f.readingGaugePa > judged.job.system.ratingGaugePa,
      ),
    answered: (judged) => referredFor(judged, 'pressureAboveRating', 'outOfRange'),
    excused: (judged) => {
      const until = judged.begun('H1');
      const read = latest(judged.facts.slice(0, until), 'gauge.read', (f) => f.gauge === 'main' && f.zeroed);
      return read !== null && read.readingGaugePa <= judged.job.system.ratingGaugePa;
    },
    numbers: ({ job }) => ({
      mainGaugePa: job.system.mainPressureGaugePa,
      ratingGaugePa: job.system.ratingGaugePa,
    }),
  }),
  condition({
    id: 'bossBeyondUse',
    present: (job) => job.workpiece.boss === 'beyondUse',
    endangeredAt: (judged) => placed(judged, 'saddle') ?? begunOrNull(judged, 'H2'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'looked' && f.saw.face === 'beyondUse'),
    answered: (judged) => referredFor(judged, 'bossBeyondUse'),
  }),
  condition({
    id: 'wallUnsound',
    present: (job) => !job.workpiece.wallSound,
    endangeredAt: (judged) => indexOf(judged, (f) => f.fact === 'tensioner.turned'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'looked' && f.saw.wallSound === false),
    answered: (judged) => referredFor(judged, 'wallUnsound'),
  }),
  condition({
    id: 'suspectWrap',
    present: (job) => job.workpiece.wrap === 'suspect',
    endangeredAt: (judged) => indexOf(judged, (f) => f.fact === 'cleaned' && f.at === 'pipe'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'looked' && f.saw.wrap === 'suspect'),
    answered: (judged) => referredFor(judged, 'suspectWrap'),
  }),
  condition({
    id: 'plugPassing',
    present: (job) => job.workpiece.plugLeakCdAM2 > 0,
    endangeredAt: (judged) => begunOrNull(judged, 'H2'),
    noticedAt: (judged) => indexOf(judged, (f) => plugSeenPassing(f, judged)),
    answered: (judged) =>
      referredFor(judged, 'proofFails') || judged.holds.some((h) => h.id === 'H2' && h.outcome === 'held'),
    causes: () => ['H2.rise'],
  }),
  condition({
    id: 'plugSeized',
    present: (job) => job.workpiece.plugBreakNm > SEIZED_NM,
    endangeredAt: (judged) => placed(judged, 'saddle'),
    noticedAt: (judged) =>
      indexOf(judged, (f) => (f.fact === 'plug.turned' && f.torqueNm > SEIZED_NM) || plugTried(f)),
    answered: (judged) => referredFor(judged, 'plugSeized'),
  }),
  condition({
    id: 'boreScale',
    present: (job) => job.workpiece.boreScale,
    endangeredAt: (judged) => begunOrNull(judged, 'H3'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'looked' && f.saw.boreClear === false),
    answered: (judged) => {
      const cleaned = indexOf(judged, (f) => f.fact === 'cleaned' && f.at === 'bore');
      const guard = begunOrNull(judged, 'H3');
      return guard === null || (cleaned !== null && cleaned < guard);
    },
    causes: () => ['H3.clear'],
  }),
  condition({
    id: 'farFeed',
    present: (job) => job.system.service.curbPassingCdAM2 > 0 && job.system.service.beyondCurbGaugePa > 0,
    endangeredAt: (judged) => begunOrNull(judged, 'H4'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'site.done' && f.task === 'checkFarFeed'),
    answered: (judged) =>
      referredFor(judged, 'stopFails', 'wrongService') || begunOrNull(judged, 'H7') === null,
    causes: () => ['H4.noPuff', 'H4.manometer', 'H1.supply'],
  }),
  condition({
    id: 'valvePassing',
    present: (job) =>
      job.kit.some((k) => k.kind === 'isolationValve' && (k.defects?.seatPassingCdAM2 ?? 0) > 0),
    endangeredAt: (judged) => begunOrNull(judged, 'H2'),
    noticedAt: (judged) =>
      indexOf(judged, (f) => f.fact === 'piece.inspected' && f.found.includes('seatPassingCdAM2')),
    answered: (judged) =>
      referredFor(judged, 'valvePassing', 'proofFails') || rejectedKind(judged, 'isolationValve'),
    causes: () => ['H2.seatTest', 'piece.isolationValve'],
  }),
  condition({
    id: 'kitUnfit',
    present: (job) => unfitIds(job).length > 0,
    endangeredAt: (judged) => {
      const ids = unfitIds(judged.job);
      return indexOf(judged, (f) => f.fact === 'piece.placed' && ids.includes(f.piece));
    },
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'piece.inspected' && f.found.length > 0),
    answered: (judged) => {
      const ids = unfitIds(judged.job);
      return !judged.facts.some((f) => f.fact === 'piece.placed' && ids.includes(f.piece));
    },
    causes: (judged) => unfitIds(judged.job).map((id) => `piece.${id}`),
  }),
  condition({
    id: 'ignitionSource',
    present: (job) => job.site.ignitionSource,
    endangeredAt: (judged) => begunOrNull(judged, 'H1'),
    noticedAt: (judged) => indexOf(judged, (f) => f.fact === 'site.done' && f.task === 'ignitionCleared'),
    answered: () => true,
    causes: () => ['H1.ignition'],
  }),
];

/** The abnormal conditions that are really there in this job. */
export function conditionsIn(job: Job): readonly Condition[] {
  return conditions.filter((one) => one.present(job));
}

/** Unsound pieces other than the isolation valve, which has a condition of its own. */
function unfitIds(job: Job): readonly string[] {
  return job.kit.flatMap((k) => {
    const flaws = Object.keys(k.defects ?? {}).filter((flaw) => flaw !== 'seatPassingCdAM2');
    const lies = k.trueSize !== undefined && k.trueSize !== k.stamped;
    return flaws.length > 0 || lies ? [k.id] : [];
  });
}

function rejectedKind(judged: Case, kind: string): boolean {
  return judged.facts.some((f) => f.fact === 'piece.rejected' && kindOf(judged.job, f.piece) === kind);
}

function plugTried(f: Fact): boolean {
  return f.fact === 'done' && f.action.kind === 'plug.turn' && f.action.turns < 0;
}

/** Bubbles at the plug, or the vented and shut chamber rising under the crew's eyes. */
function plugSeenPassing(f: Fact, judged: Case): boolean {
  if (f.fact === 'leak.looked') return f.at === 'plug' && f.bubbles !== 'none';
  if (f.fact !== 'gauge.read' || f.gauge !== 'head' || f.under.saddleOn !== 'tee') return false;
  const vented = latest(judged.facts, 'vent.turned', (v) => v.atS <= f.atS && v.open > 0);
  const pumped = latest(judged.facts, 'pumped', (p) => p.atS <= f.atS);
  const afterVent = vented !== null && (pumped === null || pumped.atS < vented.atS);
  return (
    afterVent &&
    f.under.ventOpen === 0 &&
    f.readingGaugePa > judged.limits.risePa &&
    f.atS - vented.atS >= judged.limits.riseS
  );
}
