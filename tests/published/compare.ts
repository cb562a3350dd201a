import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { afterAll, afterEach, expect, type RunnerTask } from 'vitest';
import { checksFolder } from '../../src/setup/places.mjs';

/** How a published number came to us. */
export type Obtained = 'read' | 'copy' | 'memory' | 'computed' | 'arithmetic';

/**
 * How far ours may lie from it: a share of it and an absolute amount in its unit, added; or, where the two part by
 * design, the band their ratio less one must lie in.
 */
export type Tolerance =
  { readonly share?: number; readonly absolute?: number } | { readonly from: number; readonly to: number };

/** Our number beside a published one. The model card in the app shows every one of them. */
export interface Comparison {
  readonly document: string;
  readonly table: string;
  readonly obtained: Obtained;
  readonly case: string;
  readonly ours: number;
  readonly published: number;
  readonly unit: string;
  readonly tolerance: Tolerance;
}

const compared: Comparison[] = [];
let file: Extract<RunnerTask, { filepath: string }> | null = null;

/** Fails where our number lies further from the published one than its tolerance; else it is written down. */
export function compare(comparison: Comparison): void {
  const { ours, published, tolerance } = comparison;
  const name = `${comparison.document}, ${comparison.table}, ${comparison.case}`;
  if ('from' in tolerance) {
    expect(ours / published - 1, name).toBeGreaterThanOrEqual(tolerance.from);
    expect(ours / published - 1, name).toBeLessThanOrEqual(tolerance.to);
  } else {
    const allowed = (tolerance.share ?? 0) * Math.abs(published) + (tolerance.absolute ?? 0);
    expect(Math.abs(ours - published), name).toBeLessThanOrEqual(allowed);
  }
  compared.push(comparison);
}

/** The same for many rows of one table. */
export const comparing =
  (document: string, table: string, obtained: Obtained, unit: string) =>
  (name: string, ours: number, published: number, tolerance: Tolerance): void =>
    compare({ document, table, obtained, case: name, ours, published, unit, tolerance });

const whole = (task: RunnerTask): boolean =>
  'tasks' in task ? task.tasks.every(whole) : task.mode === 'run' && task.result?.state === 'pass';

/** The comparisons of one table of one document, as the page reads them, to nine figures. */
export interface CheckedTable {
  readonly document: string;
  readonly table: string;
  readonly obtained: Obtained;
  readonly unit: string;
  readonly rows: readonly (readonly [name: string, ours: number, published: number, tolerance: Tolerance])[];
}

const nine = (value: number): number => Number(value.toPrecision(9));

function byTable(all: readonly Comparison[]): CheckedTable[] {
  const tables = new Map<string, CheckedTable & { rows: CheckedTable['rows'][number][] }>();
  for (const { document, table, obtained, unit, case: name, ours, published, tolerance } of all) {
    const key = JSON.stringify([document, table, obtained, unit]);
    const found = tables.get(key) ?? { document, table, obtained, unit, rows: [] };
    found.rows.push([name, nine(ours), nine(published), tolerance]);
    tables.set(key, found);
  }
  return [...tables.values()];
}

afterEach(({ task }) => {
  file = task.file;
});

/** Leaves a result for the model card, one file a name. */
export function leave(name: string, result: unknown): void {
  const place = join(checksFolder, `${name}.json`);
  mkdirSync(dirname(place), { recursive: true });
  writeFileSync(place, `${JSON.stringify(result)}\n`);
}

// Only a file that ran whole and passed leaves its figures, so that what is shown was all checked in one run.
afterAll(() => {
  if (file === null || compared.length === 0) return;
  const name = basename(file.filepath, '.test.ts');
  if (file.tasks.every(whole)) leave(`published/${name}`, byTable(compared));
  else rmSync(join(checksFolder, 'published', `${name}.json`), { force: true });
});
