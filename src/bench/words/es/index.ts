import type { BenchWords } from '../en/index.ts';
import { edit } from './edit.ts';
import { fields } from './fields.ts';
import { proof } from './proof.ts';
import { shelf } from './shelf.ts';

/** Every word of the bench in Spanish. */
export const benchSpanish: BenchWords = { ...shelf, ...edit, ...fields, ...proof };
