/** First letter large. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly string[], and: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${and} ${items[items.length - 1]}`;
}

/** Fills `{name}` slots of a sentence. A slot without a value throws, so that a gap is found by a test, not by a reader. */
export function filled(sentence: string, params: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    if (!(name in params)) throw new Error(`The sentence "${sentence}" has no value for ${name}.`);
    return String(params[name]);
  });
}
