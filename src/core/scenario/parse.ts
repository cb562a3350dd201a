import * as v from 'valibot';
import { crossProblems } from './cross.ts';
import { lostFrom } from './lostFrom.ts';
import { migrateScenario } from './migrate.ts';
import { problemOf, type Problem } from './problem.ts';
import { scenarioSchema, type Scenario } from './schema.ts';
import { readText } from './text/readText.ts';
import { unsoundIn } from './text/unsound.ts';

/** Longest text of an exercise read, bytes as UTF-8. A full kit with every note is a tenth of this. */
export const SCENARIO_TEXT_MOST = 262144;

/**
 * How far a document came: its text cannot be read; an entry is not what the schema says; or the entries, each sound by
 * itself, do not go together.
 */
export type RefusedAs = 'text' | 'shape' | 'whole';

export type ParsedScenario =
  { readonly scenario: Scenario } | { readonly refusedAs: RefusedAs; readonly problems: readonly Problem[] };

/**
 * Reads an exercise document: from a file's bytes, from its text, or from a value already taken out of JSON; one of an
 * older version is brought up to today's. Nothing is guessed or mended: an unknown entry is refused, and every problem is
 * told with its place. Cross-checks (pairing, kit, weights) run only on a document whose entries are sound one by one.
 * Never throws.
 */
export function parseScenario(input: unknown): ParsedScenario {
  const read =
    typeof input === 'string' || input instanceof Uint8Array
      ? readText(input, SCENARIO_TEXT_MOST)
      : { value: input };
  if ('problem' in read) return { refusedAs: 'text', problems: [read.problem] };
  const unsound = unsoundIn(read.value);
  if (unsound !== null) return { refusedAs: 'text', problems: [unsound] };
  const migrated = migrateScenario(read.value);
  if ('problems' in migrated) return { refusedAs: 'shape', ...migrated };
  const result = v.safeParse(scenarioSchema, migrated.value);
  if (!result.success) return { refusedAs: 'shape', problems: result.issues.map(problemOf) };
  const lost = lostFrom(migrated.value, result.output);
  if (lost !== null) return { refusedAs: 'shape', problems: [lost] };
  const problems = crossProblems(result.output);
  return problems.length > 0 ? { refusedAs: 'whole', problems } : { scenario: result.output };
}
