import { spoken, type Language } from '../../language.ts';
import { english } from './en.ts';
import { spanish } from './es.ts';

/** A set of words in any language: the same names, other sentences. */
type Told<T> = { readonly [K in keyof T]: T[K] extends string ? string : Told<T[K]> };
/** Everything that is said of a run by those who review it. */
export type Words = Told<typeof english>;

const languages: Readonly<Record<Language, Words>> = { en: english, es: spanish };

/** The review's words in the language of the moment. */
export const reviewWords = (): Words => languages[spoken()];
