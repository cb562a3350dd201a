import type { FaultId } from '../../core/faults/index.ts';
import type { Language } from '../language.ts';

/** What an instructor reads of a fault, and a trainee afterwards. Its name is among the conditions of the language. */
export interface FaultText {
  readonly what: string;
  readonly noticed: string;
  readonly act: string;
}
export type FaultWords = Readonly<Record<FaultId, FaultText>>;

/** The words about faults in a language; fetched when asked for, as few screens need them. */
export async function faultWords(language: Language): Promise<FaultWords> {
  return language === 'es'
    ? (await import('./es.ts')).spanishFaults
    : (await import('./en.ts')).englishFaults;
}
