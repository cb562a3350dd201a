import type { Chance } from '../../src/cli/bench/randomActions.ts';

type Loose = Record<string, unknown> | unknown[];
/** A place in a document: the set or list, and the key in it. */
interface Place {
  readonly whole: Loose;
  readonly key: string;
}

const strangers: readonly unknown[] = [
  null, true, 0, -1, 0.5, 1e308, -1e-300, 9007199254740992, 1e21, '', 'x', '🜂'.repeat(121), '🜂'.repeat(61), 'a'.repeat(2001),
  [], {}, [[]], [null], { by: 'fixed' }, { trigger: 'start' }, 'NaN', '1', 'toString', '__proto__', 2, 1, '2', 'complete',
]; // prettier-ignore
const strangeNames = [
  'toString',
  'valueOf',
  'hasOwnProperty',
  '',
  ' ',
  'Title',
  'notes',
  'on',
  'defects',
  '0',
  'length',
];

/** A document with a few of its members changed, dropped, doubled, renamed or moved. */
export function spoiltValue(document: unknown, chance: Chance): unknown {
  const root: { whole: unknown } = { whole: structuredClone(document) };
  const times = chance.now(0.7) ? 1 : 3;
  for (let i = 0; i < times; i += 1) {
    const places = placesIn(root);
    if (places.length > 0) spoilOnce(chance.pick(places), places, chance);
  }
  return root.whole ?? null;
}

function placesIn(whole: Loose): Place[] {
  return Object.entries(whole).flatMap(([key, inner]) => [
    { whole, key },
    ...(typeof inner === 'object' && inner !== null ? placesIn(inner as Loose) : []),
  ]);
}

function spoilOnce({ whole, key }: Place, all: readonly Place[], chance: Chance): void {
  const set = whole as Record<string, unknown>;
  const was = set[key];
  const ways: readonly (() => void)[] = [
    () => (set[key] = structuredClone(chance.pick(strangers))),
    () => (Array.isArray(whole) ? whole.splice(Number(key), 1) : Reflect.deleteProperty(set, key)),
    () => (set[Array.isArray(whole) ? key : chance.pick(strangeNames)] = was),
    () => {
      const other = chance.pick(all);
      set[key] = structuredClone((other.whole as Record<string, unknown>)[other.key]);
    },
    () => {
      if (typeof was === 'number') set[key] = was * chance.pick([-1, 2, 10, 1e6, 1 / 3]) + 0;
      else if (typeof was === 'string') set[key] = chance.pick([`${was} `, was.toUpperCase(), was.slice(1)]);
      else if (Array.isArray(was)) set[key] = [...(was as unknown[]), ...(was as unknown[])];
      else set[key] = chance.pick([[], [was]]);
    },
  ];
  chance.pick(ways)();
}

/** A text that no document may have, made of one that is: its bytes, and whether JSON.parse would take it. */
export interface Hostile {
  readonly bytes: Uint8Array;
  readonly how: string;
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Ways to make a text one that must not be walked. */
const hostileWays: Readonly<Record<string, (text: string, chance: Chance) => Uint8Array>> = {
  'a name that every object has': (text, chance) =>
    bytesOf(text.replace('{', `{"${chance.pick(['__proto__', 'constructor', 'prototype', '\\u005f_proto__'])}":{"x":1},`)),
  'an entry twice': (text, chance) => bytesOf(text.replace('{', `{"${chance.pick(['title', 't\\u0069tle'])}":"again",`)),
  'a number too large': (text) => bytesOf(text.replace(/:\s*\d[\d.]*/, ':1e999')),
  'a number too small': (text) => bytesOf(text.replace(/:\s*\d[\d.]*/, ':-3.0e-400')),
  'minus zero': (text) => bytesOf(text.replace(/:\s*\d[\d.]*/, ':-0.0')),
  'half a character': (text) => bytesOf(text.replace(/:\s*"/, ':"\\ud83d')),
  'no number': (text, chance) => bytesOf(text.replace(/:\s*\d[\d.]*/, `:${chance.pick(['NaN', 'Infinity', '+1', '01', '.5', '0x1', '1_0'])}`)),
  'no JSON': (text, chance) => bytesOf(text.replace(',', chance.pick([',,', ';', ' ', ',/* */', ',// x\n', ",'a':1,"]))),
  'an end too early': (text, chance) => bytesOf(text.slice(0, Math.floor(chance.between(1, text.trimEnd().length)))),
  'more after its end': (text, chance) => bytesOf(`${text}${chance.pick(['{}', '\u0000', ']', 'x'])}`),
  'bytes that are no text': (text, chance) => {
    const bytes = bytesOf(text);
    bytes[Math.floor(chance.between(0, bytes.length))] = chance.pick([0xff, 0xc0, 0xf8, 0x80]);
    return bytes;
  },
  'nested too deep': (text, chance) => {
    const deep = Math.floor(chance.between(12, 60_000));
    return bytesOf(text.replace(/:\s*\d[\d.]*/, `:${'['.repeat(deep)}${']'.repeat(deep)}`));
  },
  'brackets without end': (_text, chance) => bytesOf(chance.pick(['[', '{"a":', '[{"":']).repeat(20_000)),
  'too much of it': (text) => bytesOf(text.padEnd(262_145)),
  'text without end': (text) => bytesOf(`${text.slice(0, 40)}"${'\\u0041'.repeat(40_000)}`),
}; // prettier-ignore

export function hostile(text: string, chance: Chance): Hostile {
  const how = chance.pick(Object.keys(hostileWays));
  return { how, bytes: hostileWays[how](text, chance) };
}
