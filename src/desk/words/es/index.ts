import type { DeskWords } from '../en/index.ts';
import { intake } from './intake.ts';

/** Every word of the desk in Spanish. */
export const deskSpanish: DeskWords = { ...intake };
