import type { english } from './messages/en/index.ts';
import { filled } from './sentence.ts';
import { words } from './words.ts';

export type MessageKey = keyof typeof english.plain;

/** A plain sentence by its key, its `{slots}` filled. Throws where a slot is left without a value. */
export function say(key: MessageKey, params: Readonly<Record<string, string | number>> = {}): string {
  return filled(words().plain[key], params);
}
