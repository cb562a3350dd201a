import type { Sensitivity } from '../../core/physics/index.ts';

type Tolerance =
  { readonly share?: number; readonly absolute?: number } | { readonly from: number; readonly to: number };

/** One comparison as the checks left it. */
export type Row = readonly [name: string, ours: number, published: number, tolerance: Tolerance];

/** The comparisons of one table of one document. */
export interface CheckedTable {
  readonly document: string;
  readonly table: string;
  readonly obtained: 'read' | 'copy' | 'memory' | 'computed' | 'arithmetic';
  readonly unit: string;
  readonly rows: readonly Row[];
}

/** One document with all that was compared with it. */
export interface CheckedSource {
  readonly document: string;
  readonly tables: readonly CheckedTable[];
  readonly count: number;
  /** Most that any row used of its tolerance, 0 to 1; null where all part by design. */
  readonly used: number | null;
}

/** Everything the checks left when the product was built. */
export interface Checks {
  readonly sources: readonly CheckedSource[];
  /** What each assumed number does; null where the page was opened without results. */
  readonly sensitivity: Sensitivity | null;
}

export const noChecks: Checks = { sources: [], sensitivity: null };

const files = import.meta.glob<string>('../../../dist/shown/checks.json', {
  eager: true,
  query: '?url',
  import: 'default',
});

/** Fetches the results; none where the product has not been built. Rejects where they cannot be loaded. */
export async function loadChecks(): Promise<Checks> {
  const [place] = Object.values(files);
  if (place === undefined) return noChecks;
  const answer = await fetch(place);
  if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
  const { published, sensitivity } = (await answer.json()) as {
    published: CheckedTable[];
    sensitivity: Sensitivity;
  };
  return { sources: bySource(published), sensitivity };
}

/** Groups tables by their document. */
export function bySource(tables: readonly CheckedTable[]): CheckedSource[] {
  const found = new Map<string, CheckedTable[]>();
  for (const table of tables) found.set(table.document, [...(found.get(table.document) ?? []), table]);
  return [...found]
    .map(([document, ofIt]) => {
      const rows = ofIt.flatMap((table) => table.rows);
      const shares = rows.map(usedOf).filter((share) => share !== null);
      return {
        document,
        tables: ofIt,
        count: rows.length,
        used: shares.length === 0 ? null : Math.max(...shares),
      };
    })
    .sort((a, b) => (a.document < b.document ? -1 : 1));
}

/** Share of its tolerance that a row uses, none where nothing may differ; null where the two part by design. */
export function usedOf([, ours, theirs, tolerance]: Row): number | null {
  if ('from' in tolerance) return null;
  const allowed = (tolerance.share ?? 0) * Math.abs(theirs) + (tolerance.absolute ?? 0);
  return allowed > 0 ? Math.abs(ours - theirs) / allowed : 0;
}

/** How far ours lies from the published number, as a share of it; the bare difference where that is zero. */
export function apart([, ours, theirs]: Row): number {
  return theirs === 0 ? ours : ours / theirs - 1;
}

/** Rows of one table of one document; none where the page was opened without results. */
export function rowsOf({ sources }: Checks, document: string, table: string): readonly Row[] {
  const source = sources.find((one) => one.document === document);
  return source?.tables.filter((one) => one.table === table).flatMap((one) => one.rows) ?? [];
}
