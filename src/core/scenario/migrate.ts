import type { Problem } from './problem.ts';
import { SCENARIO_VERSION } from './schema.ts';

type Loose = Readonly<Record<string, unknown>>;
type Migrated = { readonly value: unknown } | { readonly problems: readonly Problem[] };

/** One step a version: what a document of that version is called by the next. */
const steps: Readonly<Record<number, (written: Loose) => Loose>> = {
  1: fromFirst,
};

/** Entries a step brings in. A document of the older version that has one already is none of ours. */
const broughtIn: Readonly<Record<number, readonly string[]>> = {
  1: ['kind', 'family', 'work', 'faults', 'prelude'],
};

/**
 * Brings an older exercise up to today's version, one version after another. What is not an object of a known
 * older version is given back as it is: the reader says what is wrong with it.
 */
export function migrateScenario(value: unknown): Migrated {
  let written = value;
  for (let from = 1; from < SCENARIO_VERSION; from += 1) {
    if (!isLoose(written) || written.version !== from) continue;
    const older: Loose = written;
    const early = broughtIn[from].filter((key) => Object.hasOwn(older, key));
    if (early.length > 0)
      return { problems: early.map((where) => ({ where, says: 'This entry is not known here.' })) };
    written = steps[from](older);
  }
  return { value: written };
}

function isLoose(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Version 1 knew whole abandonments only, and faults only as what the job says of its pieces. */
function fromFirst(written: Loose): Loose {
  return {
    ...written,
    version: 2,
    kind: 'job',
    family: familyOf(written),
    work: 'abandon',
    faults: [],
    prelude: [],
  };
}

function familyOf({ intendedEnding, job }: Loose): string {
  if (intendedEnding !== 'complete') return 'stop';
  const kit = isLoose(job) && Array.isArray(job.kit) ? job.kit : [];
  return kit.some((piece) => isLoose(piece) && (piece.defects !== undefined || piece.trueSize !== undefined))
    ? 'fault'
    : 'sound';
}
