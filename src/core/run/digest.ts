import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { RunState } from './types.ts';

/**
 * Canonical JSON text of plain data (RFC 8785): one text for one value, in any engine.
 * Throws an Error on what JSON cannot carry (NaN, infinity, a function).
 */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new Error('There is nothing here to write down.');
  return text;
}

/** SHA-256 of a text's UTF-8 bytes, 64 hex digits. */
export function digestOfText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/** SHA-256 of bytes, 64 hex digits. */
export function digestOfBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** SHA-256 of a value's canonical text, 64 hex digits. */
export function digestOfValue(value: unknown): string {
  return digestOfText(canonicalText(value));
}

/**
 * Digest of everything that is true of a run now, facts included, 64 hex digits. The job is left out of the rig: it is
 * the scenario's own, which is in.
 */
export function digestOf(run: RunState): string {
  const rig = { ...run.rig, job: null };
  return digestOfValue({ ...run, rig });
}
