import { edit } from './edit.ts';
import { fields } from './fields.ts';
import { proof } from './proof.ts';
import { shelf } from './shelf.ts';

/** Every word of the bench in English; the rig's own words and the shared parts' stay in their catalogues. */
export const benchEnglish = { ...shelf, ...edit, ...fields, ...proof } as const;

export type BenchKey = keyof typeof benchEnglish;
export type BenchWords = Readonly<Record<BenchKey, string>>;
