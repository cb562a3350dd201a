import * as v from 'valibot';
import { canonicalText, digestOfText, type RecordEntry } from '../run/index.ts';
import { entrySchema } from '../scenario/index.ts';

/** What can still be read of a damaged file. Nothing of it is judged. */
export interface Survived {
  /** Title of the exercise, or null where that part is lost. */
  readonly title: string | null;
  readonly person: string | null;
  readonly engine: string | null;
  /** Actions that can be read, in order from the first. */
  readonly entries: readonly RecordEntry[];
  /** How many of them, from the first, still agree with their link of the chain. */
  readonly bound: number;
}

/** Reads what can be read of a file that is no run any more. Never throws. */
export function salvage(bytes: Uint8Array): Survived {
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const scenario = memberOf(text, 'scenario');
  const by = memberOf(text, 'by');
  const engine = /"engine":"([^"\\]{1,80})"/.exec(text);
  const entries = readEntries(text);
  return {
    title: textIn(scenario, 'title'),
    person: textIn(by, 'person'),
    engine: engine?.[1] ?? null,
    entries,
    bound: countBound(entries, readChain(text)),
  };
}

/** The value of a member written `"name":{…}`, where it can be read whole. */
function memberOf(text: string, name: string): unknown {
  const begin = text.indexOf(`"${name}":{`);
  if (begin < 0) return null;
  return valueAt(text, begin + name.length + 3)?.value ?? null;
}

function textIn(value: unknown, name: string): string | null {
  if (typeof value !== 'object' || value === null) return null;
  const found = (value as Readonly<Record<string, unknown>>)[name];
  return typeof found === 'string' ? found : null;
}

function readEntries(text: string): readonly RecordEntry[] {
  const begin = text.indexOf('"entries":[');
  if (begin < 0) return [];
  const entries: RecordEntry[] = [];
  let at = begin + '"entries":['.length;
  for (;;) {
    const read = valueAt(text, at);
    const entry = read === null ? null : v.safeParse(entrySchema, read.value);
    if (read === null || entry === null || !entry.success) return entries;
    entries.push(entry.output);
    if (text[read.end] !== ',') return entries;
    at = read.end + 1;
  }
}

function readChain(text: string): readonly string[] {
  const begin = text.indexOf('"chain":[');
  if (begin < 0) return [];
  const links: string[] = [];
  const link = /"([0-9a-f]{64})",?/y;
  link.lastIndex = begin + '"chain":['.length;
  for (let found = link.exec(text); found !== null; found = link.exec(text)) links.push(found[1]);
  return links;
}

/** Version 2 has a link before the first entry; version 1 has not, and its first entry cannot be checked. */
function countBound(entries: readonly RecordEntry[], chain: readonly string[]): number {
  const follows = (i: number, offset: number): boolean => {
    const before = chain[i - 1 + offset];
    return before !== undefined && digestOfText(before + canonicalText(entries[i])) === chain[i + offset];
  };
  const from = (first: number, offset: number): number => {
    let bound = first;
    while (bound < entries.length && follows(bound, offset)) bound += 1;
    return bound === first ? 0 : bound;
  };
  return Math.max(from(0, 1), from(1, 0));
}

/** The object that begins at a place, where its brackets close; and where it ends. */
function valueAt(text: string, begin: number): { readonly value: unknown; readonly end: number } | null {
  if (text[begin] !== '{') return null;
  let depth = 0;
  let quoted = false;
  for (let i = begin; i < text.length; i += 1) {
    const c = text[i];
    if (quoted) {
      if (c === '\\') i += 1;
      else if (c === '"') quoted = false;
    } else if (c === '"') quoted = true;
    else if (c === '{') depth += 1;
    else if (c === '}') {
      depth -= 1;
      if (depth === 0) return parsed(text.slice(begin, i + 1), i + 1);
    }
  }
  return null;
}

function parsed(text: string, end: number): { readonly value: unknown; readonly end: number } | null {
  try {
    return { value: JSON.parse(text) as unknown, end };
  } catch {
    return null;
  }
}
