import { scanString } from './scanString.ts';

const space = /[ \t\n\r]*/y;
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const word = /true|false|null/y;

/** A name, number or text met on the way, as it is written. */
export interface Met {
  readonly what: 'name' | 'number' | 'text';
  readonly written: string;
  readonly index: number;
  /** The member it is, or is in, as a person would point at it. */
  readonly where: string;
  /** Of a name: the one before it in its set, and whether the set has it already, however it was written. */
  readonly previous: string | null;
  readonly again: boolean;
}

/** Where a text first is no JSON (RFC 8259), or is nested deeper than allowed. */
export interface NotJson {
  readonly why: 'notJson' | 'tooDeep';
  readonly index: number;
  readonly where: string;
}

/**
 * Walks a text as JSON, without building anything, as far as it is JSON; null where it is throughout. `meet` is told
 * of every name, number and text. Never throws, however the text is made.
 */
export function scanJson(text: string, depthMost: number, meet: (met: Met) => void): NotJson | null {
  let at = 0;
  let bad = null as NotJson | null;
  const refuse = (where: string, why: NotJson['why'] = 'notJson'): false => {
    bad ??= { why, index: at, where };
    return false;
  };
  const take = (form: RegExp): string | null => {
    form.lastIndex = at;
    const found = form.exec(text);
    if (found === null) return null;
    at = form.lastIndex;
    return found[0];
  };
  /** What stands between the quotes, as it is written. */
  const quoted = (where: string): string | null => {
    const begin = at;
    const scanned = scanString(text, begin);
    at = 'end' in scanned ? scanned.end : scanned.bad;
    if ('end' in scanned) return text.slice(begin + 1, at - 1);
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
    const names = new Set<string>();
    let previous: string | null = null;
    for (let i = 0; ; i += 1) {
      take(space);
      let inner = `${where}[${i}]`;
      if (close === '}') {
        const index = at;
        const written = quoted(where);
        if (written === null) return false;
        inner = where === '' ? written : `${where}.${written}`;
        const name = unescaped(written);
        meet({ what: 'name', written, index, where: inner, previous, again: names.has(name) });
        names.add(name);
        previous = written;
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
    const open = text[at];
    const index = at;
    if (open === '{' || open === '[')
      return depth < depthMost
        ? members(open === '{' ? '}' : ']', where, depth + 1)
        : refuse(where, 'tooDeep');
    if (open === '"') {
      const written = quoted(where);
      if (written !== null) meet({ what: 'text', written, index, where, previous: null, again: false });
      return written !== null;
    }
    if (take(word) !== null) return true;
    const written = take(number);
    if (written === null) return refuse(where);
    meet({ what: 'number', written, index, where, previous: null, again: false });
    return true;
  };
  const whole = value('', 0);
  take(space);
  if (whole && at < text.length) refuse('');
  return bad;
}

/** What a quoted text says, of what stands between its quotes. */
export function unescaped(written: string): string {
  return written.includes('\\') ? (JSON.parse(`"${written}"`) as string) : written;
}
