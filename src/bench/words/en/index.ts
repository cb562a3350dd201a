import { shelf } from './shelf.ts';

/** Every word of the bench in English; the rig's own words and the shared parts' stay in their catalogues. */
export const benchEnglish = { ...shelf } as const;

export type BenchKey = keyof typeof benchEnglish;
export type BenchWords = Readonly<Record<BenchKey, string>>;
