import { spoken, type Language } from '../../text/index.ts';
import { benchEnglish, type BenchKey, type BenchWords } from './en/index.ts';

/* What is on the screen follows: a language that arrives later is shown when it is there. */
let shelf = $state.raw<Readonly<Partial<Record<Language, BenchWords>>>>({ en: benchEnglish });

/** Fetches the bench's words in a language, once. Rejects when the part they lie in cannot be loaded. */
export async function fetchBenchWords(language: Language): Promise<void> {
  if (shelf[language] !== undefined) return;
  const { benchSpanish } = await import('./es/index.ts');
  shelf = { ...shelf, es: benchSpanish };
}

/** A sentence or label of the bench in the language of the moment; a slot without a value stays visible in braces. */
export function word(key: BenchKey, slots: Readonly<Record<string, string | number>> = {}): string {
  const words = shelf[spoken()] ?? benchEnglish;
  return words[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(slots[name] ?? whole));
}
