import type { Problem } from '../problem.ts';
import { scanJson, unescaped, type Met } from './scanJson.ts';

/** Deepest nesting of a document, and so of what is walked. An exercise has six levels. */
export const DEPTH_MOST = 12;

/** Names that mean something to every object of the platform, and nothing here. */
const forbiddenNames: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export type ReadText = { readonly value: unknown } | { readonly problem: Problem };

/**
 * Reads a document's bytes or text. Whatever could hurt or mislead a reader is refused with its place before anything is
 * built of it: too much, too deep, not UTF-8, not JSON, a name twice, a number that would not be kept as it stands.
 */
export function readText(input: string | Uint8Array, bytesMost: number): ReadText {
  if (bytesOf(input) > bytesMost) return refuse('', `The text is longer than ${bytesMost} bytes.`);
  let text: string;
  try {
    text = typeof input === 'string' ? input : new TextDecoder('utf-8', { fatal: true }).decode(input);
  } catch {
    return refuse('', 'The file is not UTF-8 text.');
  }
  let first = null as Problem | null;
  const bad = scanJson(text, DEPTH_MOST, (met) => {
    const wrong = first === null ? wrongWith(met) : null;
    if (wrong !== null) first = { where: met.where, says: `${lineOf(text, met.index)}: ${wrong}` };
  });
  if (first !== null) return { problem: first };
  if (bad === null) return { value: JSON.parse(text) as unknown };
  const wrong = bad.why === 'tooDeep' ? TOO_DEEP : NOT_JSON;
  return refuse(bad.where, `${lineOf(text, bad.index)}: ${wrong}`);
}

const NOT_JSON = 'the text is not JSON from here on.';
const TOO_DEEP = `the document is nested deeper than ${DEPTH_MOST} levels.`;

/** What is wrong with something that is JSON and cannot stand in a document; null where it can. */
function wrongWith({ what, written, again }: Met): string | null {
  if (what === 'number') return wrongNumber(written);
  if (halfEscaped.test(written) && /\p{Surrogate}/u.test(unescaped(written)))
    return 'half a character stands in the text.';
  if (what === 'text') return null;
  const name = unescaped(written);
  if (forbiddenNames.has(name)) return `no entry may be called ${name}.`;
  return again ? `the entry ${short(name)} stands here twice.` : null;
}

/** Where half a character may stand, written out or as an escape. */
const halfEscaped = /\\u[dD][89a-fA-F]|\p{Surrogate}/u;

function wrongNumber(written: string): string | null {
  const value = Number(written);
  if (!Number.isFinite(value)) return `the number ${short(written)} is larger than can be kept.`;
  if (value !== 0) return null;
  const [digits] = written.split(/[eE]/);
  if (/[1-9]/.test(digits)) return `the number ${short(written)} is smaller than can be kept.`;
  return written.startsWith('-') ? 'minus zero would not read back as itself.' : null;
}

function short(written: string): string {
  return written.length > 40 ? `${written.slice(0, 39)}…` : written;
}

function refuse(where: string, says: string): ReadText {
  return { problem: { where, says } };
}

/** Bytes of an input as UTF-8. */
function bytesOf(input: string | Uint8Array): number {
  return typeof input === 'string' ? new TextEncoder().encode(input).length : input.length;
}

/** Line and column of an index, both from 1, as an editor counts them. */
function lineOf(text: string, index: number): string {
  const before = text.slice(0, index);
  return `Line ${before.split('\n').length}, column ${index - before.lastIndexOf('\n')}`;
}
