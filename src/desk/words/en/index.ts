import { decision } from './decision.ts';
import { group } from './group.ts';
import { intake } from './intake.ts';
import { keeping } from './keeping.ts';
import { run } from './run.ts';

/** Every word of the desk in English; the rig's own words and the shared parts' stay in their catalogues. */
export const deskEnglish = { ...intake, ...run, ...decision, ...group, ...keeping } as const;

export type DeskKey = keyof typeof deskEnglish;
export type DeskWords = Readonly<Record<DeskKey, string>>;
