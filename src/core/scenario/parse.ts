import * as v from 'valibot';
import { crossProblems } from './cross.ts';
import { migrateScenario } from './migrate.ts';
import { problemOf, type Problem } from './problem.ts';
import { scenarioSchema, type Scenario } from './schema.ts';

/** Longest scenario text read, characters. A full kit with every note is a tenth of this. */
export const SCENARIO_TEXT_MOST = 262144;

export type ParsedScenario = { readonly scenario: Scenario } | { readonly problems: readonly Problem[] };

/**
 * Reads an exercise document: from its text, or from a value already taken out of JSON; one of an older version is
 * brought up to today's. Nothing is guessed or mended: an unknown entry is refused, and every problem is told with its place. Cross-checks (pairing, kit,
 * weights) run only on a document whose entries are sound one by one.
 */
export function parseScenario(input: unknown): ParsedScenario {
  const value = typeof input === 'string' ? readText(input) : { value: input };
  if ('problem' in value) return { problems: [value.problem] };
  const minus = minusZero(value.value, '', 0);
  if (minus) return { problems: [minus] };
  const migrated = migrateScenario(value.value);
  if ('problems' in migrated) return migrated;
  const result = v.safeParse(scenarioSchema, migrated.value);
  if (!result.success) return { problems: result.issues.map(problemOf) };
  const problems = crossProblems(result.output);
  return problems.length > 0 ? { problems } : { scenario: result.output };
}

function readText(text: string): { value: unknown } | { problem: Problem } {
  if (text.length > SCENARIO_TEXT_MOST)
    return { problem: { where: '', says: `The text is longer than ${SCENARIO_TEXT_MOST} characters.` } };
  try {
    return { value: JSON.parse(text) as unknown };
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unreadable';
    return { problem: { where: '', says: `The text is not JSON: ${reason}.` } };
  }
}

/** Minus zero prints as zero, so a document that holds one would not read back as itself. */
function minusZero(value: unknown, where: string, depth: number): Problem | null {
  if (depth > 12) return { where, says: 'The document is nested too deeply.' };
  if (typeof value === 'number') {
    return Object.is(value, -0) ? { where, says: 'Minus zero is not a number a rule can show.' } : null;
  }
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const place = Array.isArray(value) ? `${where}[${key}]` : where === '' ? key : `${where}.${key}`;
    const found = minusZero(inner, place, depth + 1);
    if (found) return found;
  }
  return null;
}
