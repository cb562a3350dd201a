import type { Catalogue } from './catalogue.ts';
import { spoken, type Language } from './language.ts';
import { english } from './messages/en/index.ts';

const shelf = new Map<Language, Catalogue>([['en', english]]);

/** All that can be said in the language of the moment; English until that language has been fetched. */
export function words(): Catalogue {
  return shelf.get(spoken()) ?? english;
}

/** Fetches a language once. Rejects when the part it lies in cannot be loaded. */
export async function fetchWords(language: Language): Promise<void> {
  if (shelf.has(language)) return;
  const { spanish } = await import('./messages/es/index.ts');
  shelf.set('es', spanish);
}
