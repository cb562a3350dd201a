const QUOTE = 34;
const BACKSLASH = 92;
const FIRST_PRINTED = 32;

const escape = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** Where a quoted text that begins at an index ends, or where it first is none. */
export function scanString(text: string, begin: number): { readonly end: number } | { readonly bad: number } {
  if (text.charCodeAt(begin) !== QUOTE) return { bad: begin };
  for (let at = begin + 1; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) return { end: at + 1 };
    if (code < FIRST_PRINTED) return { bad: at };
    if (code !== BACKSLASH) continue;
    escape.lastIndex = at;
    if (!escape.test(text)) return { bad: at };
    at = escape.lastIndex - 1;
  }
  return { bad: text.length };
}
