import type { Hand } from './hand.ts';
import { hasty } from './hasty.ts';
import { heavy, light } from './heavyAndLight.ts';
import { muddled } from './muddled.ts';
import { steady } from './steady/index.ts';
import { trusting } from './trusting.ts';

/** Every scripted hand, by the name it is asked for. */
export const allHands: Readonly<Record<string, Hand>> = { steady, hasty, trusting, heavy, light, muddled };
