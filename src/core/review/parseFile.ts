import {
  canonicalText,
  digestOfBytes,
  parseRecord,
  RECORD_BYTES_MOST,
  type RunRecord,
} from '../run/index.ts';
import type { BadPlace, BadPlaceWhy } from './badPlace.ts';
import { scanCanonical } from './scanCanonical.ts';
import { salvage, type Survived } from './salvage.ts';

export type ParsedFile =
  | { readonly fileDigest: string; readonly record: RunRecord; readonly firstBad: BadPlace | null }
  | { readonly fileDigest: string; readonly damage: BadPlace; readonly survived: Survived };

/** Reads a run file; where it cannot be used, finds the first place that is bad and what can still be read. */
export function parseFile(input: Uint8Array | string): ParsedFile {
  const bytes = typeof input === 'string' ? new TextEncoder().encode(input) : input;
  const fileDigest = digestOfBytes(bytes);
  const parsed = parseRecord(bytes);
  if (parsed.state === 'sound') return { fileDigest, record: parsed.record, firstBad: null };
  if (parsed.state === 'altered') {
    const { record, where, firstBad } = parsed;
    const entry = firstBad < record.entries.length ? firstBad : null;
    return {
      fileDigest,
      record,
      firstBad: { why: 'chainBroken', where, entry, byte: null, says: '' },
    };
  }
  const { where, says } = parsed.problem;
  const survived = salvage(bytes.subarray(0, RECORD_BYTES_MOST));
  return { fileDigest, damage: where === '' ? damageOf(bytes, says) : named(where, says), survived };
}

function named(where: string, says: string): BadPlace {
  const inEntry = /^entries\[(\d+)\]/.exec(where);
  const entry = inEntry === null ? null : Number(inEntry[1]);
  return { why: entry === null ? 'notARun' : 'badEntry', where, entry, byte: null, says };
}

/** A file that is wrong as a whole: the first byte at which it is. */
function damageOf(bytes: Uint8Array, says: string): BadPlace {
  const at = (why: BadPlaceWhy, byte: number | null): BadPlace => ({
    why,
    where: '',
    entry: null,
    byte,
    says: '',
  });
  if (bytes.length > RECORD_BYTES_MOST) return at('tooLarge', RECORD_BYTES_MOST);
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const again = new TextEncoder().encode(text);
  const notUtf8 = firstDifference(bytes, again);
  if (notUtf8 !== null) return at('notUtf8', beginOfMark(again, notUtf8));
  const bytesBefore = (index: number): number => new TextEncoder().encode(text.slice(0, index)).length;
  const scanned = scanCanonical(text);
  if (scanned !== null) return { ...at(scanned.why, bytesBefore(scanned.index)), where: scanned.where };
  const due = new TextEncoder().encode(canonicalText(JSON.parse(text)));
  const notCanonical = firstDifference(bytes, due);
  if (notCanonical !== null) return at('notCanonical', notCanonical);
  return { why: 'notARun', where: '', entry: null, byte: null, says };
}

/** A byte that is no text may begin like the mark that stands for it: where that mark begins. */
function beginOfMark(decoded: Uint8Array, differsAt: number): number {
  const mark = [0xef, 0xbf, 0xbd];
  const back = [2, 1].find((k) => mark.every((byte, i) => decoded[differsAt - k + i] === byte));
  return differsAt - (back ?? 0);
}

function firstDifference(a: Uint8Array, b: Uint8Array): number | null {
  const most = Math.max(a.length, b.length);
  for (let i = 0; i < most; i += 1) if (a[i] !== b[i]) return i;
  return null;
}
