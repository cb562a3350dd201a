import { spoken, type Language } from '../../text/index.ts';
import { deskEnglish, type DeskKey, type DeskWords } from './en/index.ts';

/* What is on the screen follows: a language that arrives later is shown when it is there. */
let shelf = $state.raw<Readonly<Partial<Record<Language, DeskWords>>>>({ en: deskEnglish });

/** Fetches the desk's words in a language, once. Rejects when the part they lie in cannot be loaded. */
export async function fetchDeskWords(language: Language): Promise<void> {
  if (shelf[language] !== undefined) return;
  const { deskSpanish } = await import('./es/index.ts');
  shelf = { ...shelf, es: deskSpanish };
}

/** A sentence or label of the desk in the language of the moment; a slot without a value stays visible in braces. */
export function word(key: DeskKey, slots: Readonly<Record<string, string | number>> = {}): string {
  const words = shelf[spoken()] ?? deskEnglish;
  return words[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(slots[name] ?? whole));
}
