import type { Heading, Scenario } from '../scenario/index.ts';
import { findingIds } from './catalogue.ts';
import { defaultWeights, type Draft } from './case.ts';
import type { Finding } from './types.ts';

/** Points are told to a hundredth. */
export function hundredths(points: number): number {
  const told = Math.floor(points * 100 + 0.5) / 100;
  return told === 0 ? 0 : told;
}

/**
 * Turns drafts into findings. One cause is charged once: hold points first, then what costs most; the others stay
 * in the list at no cost. No heading loses more than it has. Gas that got away is charged only beyond what the acts
 * that let it go have cost already.
 */
export function charge(drafts: readonly Draft[], weights: Scenario['weights']): readonly Finding[] {
  const claimed = new Set<string>();
  const left: Record<Heading, number> = { ...weights };
  let actPoints = 0;
  const charged = [...drafts].sort(byGravity).map((draft) => {
    const heading = findingIds[draft.id].heading;
    const fresh = !draft.causes.some((cause) => claimed.has(cause));
    const scale = weights[heading] / defaultWeights[heading];
    const asked = draft.release === 'effect' ? Math.max(0, draft.points - actPoints) : draft.points;
    const points = fresh ? hundredths(Math.min(left[heading], asked * scale)) : 0;
    if (fresh) for (const cause of draft.causes) claimed.add(cause);
    if (draft.release === 'act') actPoints += points;
    left[heading] -= points;
    return toFinding(draft, heading, points);
  });
  return charged.sort((a, b) => a.atS - b.atS || compareText(a.id, b.id));
}

/** What is left of each heading, of its weight. */
export function tally(
  findings: readonly Finding[],
  weights: Scenario['weights'],
): Record<Heading, { readonly got: number; readonly of: number }> {
  const got = (heading: Heading): { readonly got: number; readonly of: number } => {
    const lost = findings.reduce((sum, f) => (f.heading === heading ? sum + f.points : sum), 0);
    return { got: hundredths(Math.max(0, weights[heading] - lost)), of: weights[heading] };
  };
  return {
    holdPoints: got('holdPoints'),
    gasControl: got('gasControl'),
    technique: got('technique'),
    kit: got('kit'),
    abnormal: got('abnormal'),
  };
}

function toFinding(draft: Draft, heading: Heading, points: number): Finding {
  return {
    id: draft.id,
    heading,
    atS: draft.atS,
    points,
    critical: draft.critical === true,
    holdPoint: draft.holdPoint ?? null,
    numbers: draft.numbers ?? {},
    items: draft.items ?? [],
  };
}

function byGravity(a: Draft, b: Draft): number {
  return rank(a) - rank(b) || b.points - a.points || a.atS - b.atS || compareText(a.id, b.id);
}

/** Hold points claim their causes first; effects of released gas come last. */
function rank(draft: Draft): number {
  if (draft.release === 'effect') return 2;
  return findingIds[draft.id].heading === 'holdPoints' ? 0 : 1;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
