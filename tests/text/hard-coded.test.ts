import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';
import { describe, expect, it } from 'vitest';

const spoken: ReadonlySet<string> = new Set([
  'aria-label',
  'aria-description',
  'aria-valuetext',
  'aria-roledescription',
  'title',
  'alt',
  'placeholder',
  'label',
]);
const hasLetters = (text: string): boolean => /\p{L}{2}/u.test(text);

interface Node {
  readonly type: string;
  readonly name?: string;
  readonly data?: string;
  readonly value?: unknown;
  readonly [more: string]: unknown;
}
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** Words of a template that come from no expression: text that is shown, and attributes that are read out. */
function* written(value: unknown, attribute: string | null = null): Generator<string> {
  if (Array.isArray(value)) {
    for (const one of value) yield* written(one, attribute);
    return;
  }
  if (!isNode(value) || value.type === 'StyleDirective') return;
  if (value.type === 'Attribute') {
    if (spoken.has(value.name ?? '')) yield* written(value.value, value.name ?? '');
    return;
  }
  if (value.type === 'Text') {
    if (hasLetters(value.data ?? '')) yield `${attribute ?? 'text'}: ${(value.data ?? '').trim()}`;
    return;
  }
  // A word given in braces, as it stands or between the slots of a template, is as hard-coded as one without.
  if (value.type === 'ExpressionTag') {
    for (const text of literals(value.expression))
      if (hasLetters(text)) yield `${attribute ?? 'text'}: ${text}`;
    return;
  }
  for (const [key, inner] of Object.entries(value))
    if (key !== 'css' && key !== 'instance' && key !== 'module' && key !== 'expression' && key !== 'test')
      yield* written(inner, attribute);
}

/** Text that an expression can come to by itself; what is handed to a function or compared with is not shown. */
function* literals(value: unknown): Generator<string> {
  if (!isNode(value)) return;
  if (value.type === 'Literal' && typeof value.value === 'string') yield value.value;
  if (value.type === 'TemplateLiteral' && Array.isArray(value.quasis))
    for (const part of value.quasis as { value: { raw: string } }[]) yield part.value.raw;
  if (value.type === 'ConditionalExpression') {
    yield* literals(value.consequent);
    yield* literals(value.alternate);
  }
  if (value.type === 'LogicalExpression' || value.type === 'BinaryExpression') {
    if (value.type === 'BinaryExpression' && value.operator !== '+') return;
    yield* literals(value.left);
    yield* literals(value.right);
  }
}

const wordsOf = (source: string): string[] => [...written(parse(source, { modern: true }).fragment)];
const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.svelte'))
  .map((name) => join('src', name));

describe('what the screens say', () => {
  it('comes from the message catalogue, every word of it', () => {
    expect(files.length).toBeGreaterThan(20);
    const found = files.flatMap((file) =>
      wordsOf(readFileSync(file, 'utf8')).map((text) => `${file}: ${text}`),
    );
    expect(found).toEqual([]);
  });

  it.each([
    ['<p>Hello there</p>', 'text: Hello there'],
    ['<button aria-label="Shut it">×</button>', 'aria-label: Shut it'],
    ['<img alt="A valve" src="a.png" />', 'alt: A valve'],
    ['<button aria-label="{id}: sign it">{id}</button>', 'aria-label: : sign it'],
    ["{#if open}<p>{open ? 'open' : tell('do.shut')}</p>{/if}", 'text: open'],
    ['<p>{`about ${n}`}</p>', 'text: about '],
    ['{#each rows as row}<td>{row} psi</td>{/each}', 'text: psi'],
  ])('would be caught in %s', (source, expected) => {
    expect(wordsOf(source)).toEqual([expected]);
  });

  it('may be signs, single letters, classes and words looked up', () => {
    const source = `<p class="small soft" id="a-title">{tell('do.open')} · {n} × <kbd>P</kbd></p>`;
    expect(wordsOf(source)).toEqual([]);
  });
});
