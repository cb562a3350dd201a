import { defaultWeights, findingIds, type RunAssessment } from '../../judge/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import type { Expected } from './rules/index.ts';

/** Points are told to a hundredth: a sum of them may be out by less than half of that. */
const TOLD_TO = 0.005;

/**
 * Whether a deviation was judged as its rule says: what matters costs at least so much under one of its headings, or is
 * critical there; what must be critical is, under the right heading; what is harmless costs nothing and changes no verdict.
 */
export function chargedAs(
  expected: Expected,
  whole: RunAssessment,
  assessed: RunAssessment,
  weights: Scenario['weights'],
): boolean {
  if ('harmless' in expected)
    return assessed.score > whole.score - TOLD_TO && assessed.verdict === whole.verdict;
  const { headings, least } = expected;
  const critical = assessed.findings.some(
    (finding) => finding.critical && headings.includes(findingIds[finding.id].heading),
  );
  if (critical || expected.critical === true) return critical;
  return headings.some((heading) => {
    const lost = whole.headings[heading].got - assessed.headings[heading].got;
    return lost > (least * weights[heading]) / defaultWeights[heading] - TOLD_TO;
  });
}
