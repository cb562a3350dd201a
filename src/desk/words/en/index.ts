import { intake } from './intake.ts';

/** Every word of the desk in English; the rig's own words and the shared parts' stay in their catalogues. */
export const deskEnglish = { ...intake } as const;

export type DeskKey = keyof typeof deskEnglish;
export type DeskWords = Readonly<Record<DeskKey, string>>;
