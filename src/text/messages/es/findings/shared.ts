import type { Finding } from '../../../../core/judge/index.ts';
import type { Speech } from '../../../catalogue.ts';
import { and } from '../grammar.ts';

/** A number a finding rests on; 0 where it was not given. */
export const numberOf = (finding: Finding, name: string): number => finding.numbers[name] ?? 0;

/** `una vez`, `3 veces`. */
export function timesOf(finding: Finding, name = 'times'): string {
  const times = numberOf(finding, name);
  return times === 1 ? 'una vez' : times === 2 ? 'dos veces' : `${times} veces`;
}

/** The kit pieces a finding names. */
export const piecesOf = (finding: Finding, speech: Speech): string => and(finding.items.map(speech.thePiece));

/** The items of a finding by a table of words. */
export function itemsOf(finding: Finding, words: Readonly<Record<string, string>>): string {
  return and(finding.items.map((item) => (Object.hasOwn(words, item) ? words[item] : item)));
}

/** Which seat of the saddle. */
export const seats: Readonly<Record<string, string>> = { tee: 'sobre la te', coupling: 'sobre el manguito' };
