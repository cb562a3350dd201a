import { english } from './en/index.ts';

export type WordKey = keyof typeof english;

/**
 * A sentence or label of the screens. Words in braces are replaced by the parameters; a parameter that is missing
 * stays visible in braces, so that a hole in a sentence is seen and not read over.
 */
export function tell(key: WordKey, parameters: Readonly<Record<string, string | number>> = {}): string {
  return english[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(parameters[name] ?? whole));
}
