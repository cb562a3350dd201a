import { scanJson } from '../scenario/index.ts';

/** Deeper than any run: a text nested deeper is refused before it is read. */
const DEPTH_MOST = 64;

/** Where a text first is not as it should be: its index, and the member it is in. */
export interface Scanned {
  readonly why: 'notJson' | 'notCanonical';
  readonly index: number;
  readonly where: string;
}

/**
 * First place at which a text stops being JSON (RFC 8259), or at which names are not in the order of canonical JSON
 * (RFC 8785); null where neither shows. A bracket that is missing shows only at the end; names out of order tell sooner.
 */
export function scanCanonical(text: string): Scanned | null {
  let disorder = null as Omit<Scanned, 'why'> | null;
  const bad = scanJson(text, DEPTH_MOST, ({ written, index, where, previous }) => {
    if (previous !== null && written <= previous) disorder ??= { index, where };
  });
  if (bad !== null) {
    const { index, where } = disorder ?? bad;
    return { why: 'notJson', index, where };
  }
  return disorder === null ? null : { why: 'notCanonical', index: disorder.index, where: disorder.where };
}
