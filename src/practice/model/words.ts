import type { Language } from '../../text/index.ts';
import type english from './words/en.json';

/** What the page says, in whatever language. Words in braces are figures of the run that built the page. */
export type Words = typeof english;

const files = import.meta.glob<string>('./words/*.json', { eager: true, query: '?url', import: 'default' });

/** Fetches the page's words: long prose for a page opened seldom, so it is data and not script. Rejects if it cannot. */
export async function fetchModelWords(language: Language): Promise<Words> {
  const answer = await fetch(files[`./words/${language}.json`]);
  if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
  return (await answer.json()) as Words;
}

/** A sentence with its figures; one that is missing stays visible in braces. */
export function fill(sentence: string, figures: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, name: string) => String(figures[name] ?? whole));
}
