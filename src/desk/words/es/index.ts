import type { DeskWords } from '../en/index.ts';
import { decision } from './decision.ts';
import { group } from './group.ts';
import { intake } from './intake.ts';
import { keeping } from './keeping.ts';
import { run } from './run.ts';

/** Every word of the desk in Spanish. */
export const deskSpanish: DeskWords = { ...intake, ...run, ...decision, ...group, ...keeping };
