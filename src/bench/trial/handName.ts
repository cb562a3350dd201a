import type { BenchKey } from '../words/en/index.ts';
import { word } from '../words/word.svelte.ts';

const hands = ['steady', 'hasty', 'trusting', 'heavy', 'light', 'muddled'] as const;

/** What a scripted hand is called. */
export function handName(hand: string): string {
  const known = hands.find((one) => one === hand);
  if (known === undefined) return hand;
  const key: BenchKey = `hand.${known}`;
  return word(key);
}
