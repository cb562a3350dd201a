import type { BenchWords } from '../en/index.ts';
import { shelf } from './shelf.ts';

/** Every word of the bench in Spanish. */
export const benchSpanish: BenchWords = { ...shelf };
