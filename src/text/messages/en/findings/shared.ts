import type { Finding } from '../../../../core/judge/index.ts';
import type { Speech } from '../../../catalogue.ts';
import { listed } from '../../../sentence.ts';

/** A number a finding rests on; 0 where it was not given. */
export const numberOf = (finding: Finding, name: string): number => finding.numbers[name] ?? 0;

/** `once`, `twice`, `3 times`. */
export function timesOf(finding: Finding, name = 'times'): string {
  const times = numberOf(finding, name);
  return times === 1 ? 'once' : times === 2 ? 'twice' : `${times} times`;
}

/** The kit pieces a finding names. */
export const piecesOf = (finding: Finding, speech: Speech): string =>
  listed(finding.items.map(speech.thePiece), 'and');

/** The items of a finding by a table of words. */
export function itemsOf(finding: Finding, words: Readonly<Record<string, string>>): string {
  const known = finding.items.map((item) => (Object.hasOwn(words, item) ? words[item] : item));
  return listed(known, 'and');
}

/** Which seat of the saddle. */
export const seats: Readonly<Record<string, string>> = { tee: 'on the tee', coupling: 'on the coupling' };
