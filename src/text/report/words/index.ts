import { spoken, type Language } from '../../language.ts';
import { english } from './en.ts';
import { spanish } from './es.ts';

/** The same names with other sentences: a set of words in any language. */
type Told<T> = { readonly [K in keyof T]: T[K] extends string ? string : Told<T[K]> };

/** Everything that a report says. */
export type ReportWords = Told<typeof english>;

const languages: Readonly<Record<Language, ReportWords>> = { en: english, es: spanish };

/** The report's words in the language of the moment. */
export const reportWords = (): ReportWords => languages[spoken()];
