import { hundredths, type Assessment, type Finding } from '../judge/index.ts';
import type { HoldPointId } from '../rig/index.ts';
import { headings, type Heading } from '../scenario/index.ts';

/** A finding of the machine that an assessor does not hold against the person, and why. */
export interface SetAside {
  /** `keyOf` the finding. */
  readonly finding: string;
  readonly reason: string;
}

/** Something the machine did not find, seen by the assessor. */
export interface AddedFinding {
  readonly heading: Heading;
  /** Simulated time it bears on, s. */
  readonly atS: number;
  readonly points: number;
  readonly critical: boolean;
  readonly holdPoint: HoldPointId | null;
  /** What was seen. */
  readonly says: string;
  readonly reason: string;
}

/** What an assessor holds otherwise than the machine. */
export interface Opinion {
  readonly setAside: readonly SetAside[];
  readonly added: readonly AddedFinding[];
}

export const noOpinion: Opinion = { setAside: [], added: [] };

/** The machine's judgement untouched, and the assessor's beside it. */
export interface Weighed {
  readonly machine: Assessment;
  readonly assessor: {
    readonly verdict: Assessment['verdict'];
    readonly score: number;
    readonly headings: Assessment['headings'];
    /** Findings of the machine that stand. */
    readonly kept: readonly Finding[];
    readonly setAside: readonly { readonly finding: Finding; readonly reason: string }[];
    readonly added: readonly AddedFinding[];
  };
  /** Keys set aside that name no finding of this judgement: they were made on another one. */
  readonly stale: readonly string[];
}

/** A name of a finding within its run that stays the same whenever the run is judged alike. */
export function keyOf({ id, atS, holdPoint, items }: Finding): string {
  return [id, atS, holdPoint ?? '', ...items].join('|');
}

/**
 * Lays an assessor's opinion beside the machine's judgement. Points come back with the finding that cost them; other
 * findings of the same cause, which cost nothing, stay as they are. No heading loses more than it has.
 */
export function weigh(machine: Assessment, opinion: Opinion, cutScore: number): Weighed {
  const reasons = new Map(opinion.setAside.map(({ finding, reason }) => [finding, reason]));
  const kept: Finding[] = [];
  const setAside: { finding: Finding; reason: string }[] = [];
  for (const finding of machine.findings) {
    const reason = reasons.get(keyOf(finding));
    if (reason === undefined) kept.push(finding);
    else setAside.push({ finding, reason });
  }
  const lost = (heading: Heading): number =>
    [...kept, ...opinion.added].reduce((sum, f) => (f.heading === heading ? sum + f.points : sum), 0);
  const told = Object.fromEntries(
    headings.map((heading) => {
      const { of } = machine.headings[heading];
      return [heading, { got: hundredths(Math.max(0, of - lost(heading))), of }];
    }),
  ) as Assessment['headings'];
  const score = hundredths(headings.reduce((sum, heading) => sum + told[heading].got, 0));
  const critical = [...kept, ...opinion.added].some((finding) => finding.critical);
  const passed = score >= cutScore && machine.endedAsIntended;
  const keys = new Set(machine.findings.map(keyOf));
  return {
    machine,
    assessor: {
      verdict: critical ? 'critical' : passed ? 'pass' : 'fail',
      score,
      headings: told,
      kept,
      setAside,
      added: opinion.added,
    },
    stale: opinion.setAside.map(({ finding }) => finding).filter((key) => !keys.has(key)),
  };
}
