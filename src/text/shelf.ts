import type { Catalogue } from './catalogue.ts';
import type { Language } from './language.ts';

/** Catalogues fetched so far. English is not among them: it is always at hand for whoever words anything. */
export const shelf = new Map<Language, Catalogue>();

/** Fetches a language once. Rejects when the part it lies in cannot be loaded. */
export async function fetchWords(language: Language): Promise<void> {
  if (language === 'en' || shelf.has(language)) return;
  const { spanish } = await import('./messages/es/index.ts');
  shelf.set('es', spanish);
}
