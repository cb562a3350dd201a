/** Deeper than any run: a text nested deeper is refused before it is read. */
const DEPTH_MOST = 64;

const space = /[ \t\n\r]*/y;
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const string = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const word = /true|false|null/y;
/** As far as a string can be followed before it goes wrong. */
const begunString = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/uy;

/** First place at which a text stops being JSON (RFC 8259): its index, and which member it is in; null where it is. */
export function firstNotJson(text: string): { readonly index: number; readonly where: string } | null {
  let at = 0;
  let bad: { index: number; where: string } | null = null;
  const refuse = (where: string, index = at): false => {
    bad ??= { index, where };
    return false;
  };
  const take = (form: RegExp): string | null => {
    form.lastIndex = at;
    const found = form.exec(text);
    if (found === null) return null;
    at = form.lastIndex;
    return found[0];
  };
  const key = (where: string): string | null => {
    const found = take(string);
    if (found !== null) return found.slice(1, -1);
    take(begunString);
    refuse(where);
    return null;
  };
  const members = (close: '}' | ']', where: string, depth: number): boolean => {
    at += 1;
    take(space);
    if (text[at] === close) {
      at += 1;
      return true;
    }
    for (let i = 0; ; i += 1) {
      take(space);
      let inner = `${where}[${i}]`;
      if (close === '}') {
        const name = key(where);
        if (name === null) return false;
        inner = where === '' ? name : `${where}.${name}`;
        take(space);
        if (text[at] !== ':') return refuse(inner);
        at += 1;
      }
      if (!value(inner, depth)) return false;
      take(space);
      if (text[at] === ',') at += 1;
      else if (text[at] === close) {
        at += 1;
        return true;
      } else return refuse(where);
    }
  };
  const value = (where: string, depth: number): boolean => {
    take(space);
    if (depth > DEPTH_MOST) return refuse(where);
    if (text[at] === '{') return members('}', where, depth + 1);
    if (text[at] === '[') return members(']', where, depth + 1);
    if (text[at] === '"') return key(where) !== null;
    return take(word) !== null || take(number) !== null || refuse(where);
  };
  if (!value('', 0)) return bad;
  take(space);
  return at === text.length ? null : { index: at, where: '' };
}
