import type { Catalogue } from '../../catalogue.ts';
import { nouns } from './glossary.ts';

/** `el` or `la` before a piece's name. */
export const the: Catalogue['the'] = (kind, name) => `${nouns[kind].feminine ? 'la' : 'el'} ${name}`;
export const numbered: Catalogue['numbered'] = (no) => `n.º ${no}`;

/** `de` before a noun with its article: `del tapón`, `de la silla`. */
export const of = (noun: string): string => (noun.startsWith('el ') ? `del ${noun.slice(3)}` : `de ${noun}`);
/** `a` before a noun with its article: `al tapón`, `a la silla`. */
export const to = (noun: string): string => (noun.startsWith('el ') ? `al ${noun.slice(3)}` : `a ${noun}`);

/** A noun without its article. */
export const bare = (noun: string): string => noun.replace(/^(el|la|los|las) /, '');

/** The same table without articles, as buttons and lists say it. */
export function bareAll<K extends string>(table: Readonly<Record<K, string>>): Readonly<Record<K, string>> {
  const entries = (Object.entries(table) as [K, string][]).map(([key, noun]) => [key, bare(noun)]);
  return Object.fromEntries(entries) as Record<K, string>;
}

/** `y` between things, `e` before the sound of i. */
export function and(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  const last = items[items.length - 1];
  const joint = /^h?[ií](?!e)/i.test(last) ? 'e' : 'y';
  return `${items.slice(0, -1).join(', ')} ${joint} ${last}`;
}
