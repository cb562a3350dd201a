import { canonicalText, digestOfText } from './digest.ts';
import type { RunRecord } from './types.ts';

/** A record before it is sealed: all that its chain binds, the exercise as it is written in the file. */
export type Unsealed = Omit<RunRecord, 'chain' | 'scenario'> & { readonly scenario: unknown };

/** Where a record stops agreeing with its chain. */
export interface ChainBreak {
  /** Place in the document: `scenario`, `entries[7]`, `chain[8]`, or `end` for what is said of the whole. */
  readonly where: string;
  /** First entry, counted from 0, that can no longer be relied on; the number of entries where all of them still can. */
  readonly firstBad: number;
}

/**
 * The hash chain of a run. The first link binds engine and exercise; then one link an action, each over the link
 * before it; the last binds all else that the record says: who, how it ended, what was said of it.
 * Version 1 had neither the first nor the last of these in the file.
 */
export function chainOf(record: Unsealed): string[] {
  const { engine, scenario, entries } = record;
  const head = digestOfText(canonicalText({ engine, scenario }));
  let link = head;
  const links = entries.map((entry) => (link = digestOfText(link + canonicalText(entry))));
  return record.version === 1 ? links : [head, ...links, digestOfText(link + canonicalText(restOf(record)))];
}

/** All of a record that no link before the last binds. */
function restOf(record: Unsealed): unknown {
  const bound: readonly string[] = ['engine', 'scenario', 'entries', 'chain'];
  return Object.fromEntries(Object.entries(record).filter(([name]) => !bound.includes(name)));
}

/** The first place at which a record no longer agrees with its own hash chain, or null where it does throughout. */
export function firstBreak(record: Unsealed & Pick<RunRecord, 'chain'>): ChainBreak | null {
  const due = chainOf(record);
  const { chain, entries } = record;
  const most = Math.max(due.length, chain.length);
  const bad = (i: number): boolean => due[i] !== chain[i];
  let at = 0;
  while (at < most && !bad(at)) at += 1;
  if (at === most) return null;
  const entry = record.version === 1 ? at : at - 1;
  const firstBad = Math.min(Math.max(0, entry), entries.length);
  // A changed thing breaks every later link; a changed link breaks itself alone.
  const alone = chain.length === due.length && at < most - 1 && !bad(at + 1);
  if (alone) return { where: `chain[${at}]`, firstBad };
  if (entry < 0) return { where: 'scenario', firstBad };
  return { where: entry < entries.length ? `entries[${entry}]` : 'end', firstBad };
}
