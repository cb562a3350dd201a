/** Deeper than any run: a text nested deeper is refused before it is read. */
const DEPTH_MOST = 64;

const space = /[ \t\n\r]*/y;
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const string = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const word = /true|false|null/y;
/** As far as a string can be followed before it goes wrong. */
const begunString = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/uy;

/** Where a text first is not as it should be: its index, and the member it is in. */
export interface Scanned {
  readonly why: 'notJson' | 'notCanonical';
  readonly index: number;
  readonly where: string;
}

/**
 * First place at which a text stops being JSON (RFC 8259), or at which names are not in the order of canonical JSON
 * (RFC 8785); null where neither shows. A bracket that is missing shows only at the end; names out of order tell sooner.
 */
export function scanJson(text: string): Scanned | null {
  let at = 0;
  let bad = null as Pick<Scanned, 'index' | 'where'> | null;
  let disorder = null as Pick<Scanned, 'index' | 'where'> | null;
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
    let before = '';
    for (let i = 0; ; i += 1) {
      take(space);
      const index = at;
      let inner = `${where}[${i}]`;
      if (close === '}') {
        const name = key(where);
        if (name === null) return false;
        inner = where === '' ? name : `${where}.${name}`;
        if (i > 0 && name <= before) disorder ??= { index, where: inner };
        before = name;
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
  const whole = value('', 0);
  take(space);
  if (whole && at < text.length) refuse('');
  if (bad !== null) return { why: 'notJson', ...(disorder ?? bad) };
  return disorder === null ? null : { why: 'notCanonical', ...disorder };
}
