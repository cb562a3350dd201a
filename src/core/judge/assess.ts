import { defaultWeights, layOutCase, type Draft, type JudgedRun } from './case.ts';
import { charge, hundredths, tally } from './charge.ts';
import { endedAsIntended, endingOf } from './ending.ts';
import { AIR_KG_PER_MOL, GAS_KG_PER_MOL } from './ledger.ts';
import { rules } from './rules/index.ts';
import type { Assessment } from './types.ts';

/** An assessment but for where the run came from. */
export type RunAssessment = Omit<Assessment, 'digest' | 'engine'>;

/**
 * Judges a replayed run by its facts, ledger and end, and by how often the coach was asked. Pure; nothing about speed.
 */
export function assess(run: JudgedRun, asked = 0): RunAssessment {
  const judged = layOutCase(run);
  const { scenario, ledger } = run;
  const findings = charge(
    [...rules.flatMap((rule) => rule(judged)), ...hintsAsked(run, asked)].filter(
      (draft) => draft.atS >= judged.given.atS,
    ),
    scenario.weights,
  );
  const headings = tally(findings, scenario.weights);
  const score = hundredths(Object.values(headings).reduce((sum, heading) => sum + heading.got, 0));
  const critical = findings.some((finding) => finding.critical);
  const asIntended = endedAsIntended(judged);
  const passed = score >= scenario.cutScore && asIntended;
  return {
    verdict: critical ? 'critical' : passed ? 'pass' : 'fail',
    ending: endingOf(judged),
    intendedEnding: scenario.intendedEnding,
    endedAsIntended: asIntended,
    score,
    headings,
    findings,
    holdPoints: judged.holds.map(({ id, outcome, atS }) => ({ id, outcome, atS })),
    ledger: {
      toExcavationKg: ledger.toHoleMol * GAS_KG_PER_MOL,
      throughBleedKg: ledger.throughBleedMol * GAS_KG_PER_MOL,
      toServiceKg: ledger.toServiceMol * GAS_KG_PER_MOL,
      airIntoMainKg: ledger.airIntoMainMol * AIR_KG_PER_MOL,
    },
    peakLelFraction: run.air.peakLelShare,
    actions: run.actions - judged.given.actions,
    simulatedS: run.clockS - judged.given.atS,
  };
}

/** What the hints cost, where the exercise says that they do. */
function hintsAsked({ scenario, clockS }: JudgedRun, asked: number): readonly Draft[] {
  const each = scenario.coach?.hintPoints ?? 0;
  if (asked === 0 || each === 0) return [];
  const points = (asked * each * defaultWeights.technique) / Math.max(1, scenario.weights.technique);
  return [{ id: 'coachAsked', atS: clockS, points, numbers: { times: asked, each }, causes: ['coach'] }];
}
