import { spoken, type Language } from '../../text/index.ts';
import { english } from './en/index.ts';
import type { ExerciseWords } from './exercise.ts';

export type WordKey = keyof typeof english;

/** The screens in one language. */
interface ScreenWords {
  readonly labels: Readonly<Record<WordKey, string>>;
  readonly exercise: (written: ExerciseWords) => ExerciseWords;
}

/** Exercises are written in English, so that English has no words of its own for them. */
const inEnglish: ScreenWords = { labels: english, exercise: (written) => written };
const shelf = new Map<Language, ScreenWords>([['en', inEnglish]]);

/** Fetches the screens' words in a language, once. Rejects when the part it lies in cannot be loaded. */
export async function fetchLabels(language: Language): Promise<void> {
  if (shelf.has(language)) return;
  const { exerciseInSpanish, spanish } = await import('./es/index.ts');
  shelf.set('es', { labels: spanish, exercise: exerciseInSpanish });
}

const now = (): ScreenWords => shelf.get(spoken()) ?? inEnglish;

/**
 * A sentence or label of the screens, in the language of the moment. Words in braces are replaced by the parameters;
 * a parameter that is missing stays visible in braces, so that a hole in a sentence is seen and not read over.
 */
export function tell(key: WordKey, parameters: Readonly<Record<string, string | number>> = {}): string {
  return now().labels[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(parameters[name] ?? whole));
}

/** What an exercise says of itself, in the language of the moment. */
export const exerciseIn = (written: ExerciseWords): ExerciseWords => now().exercise(written);
