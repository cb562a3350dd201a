import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/core/scenario/index.ts';
import { problem } from '../../src/text/messages/es/problems.ts';

/** Sentences that the core tells of a document, out of its own source, with a sample where a figure or name stands. */
function sentences(): string[] {
  const written =
    /(?:says: |says = |return |refuse\(|unusable\(|refused\('[\w.]+', )(?:`([A-Z][^`]*\.)`|'([A-Z][^']*\.)')/g;
  return [
    'src/core/scenario',
    'src/core/run/record.ts',
    'src/core/run/prelude.ts',
    'src/core/hands/cutDrill.ts',
  ]
    .flatMap((place) =>
      place.endsWith('.ts')
        ? [place]
        : readdirSync(place)
            .filter((name) => name.endsWith('.ts'))
            .map((name) => join(place, name)),
    )
    .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(written)])
    .map(([, template, plain]) =>
      (template ?? plain).replace(/\$\{which\}/g, ' of size 7').replace(/\$\{[^}]*\}/g, '7'),
    );
}

/** What only a text can have wrong, each with a text that has it. */
const texts: readonly string[] = [
  '{"title": NaN}', '['.repeat(40), '{"title":"\\ud800"}', '{"__proto__":1}', '{"title":1,"title":2}', '{"seed":1e999}',
  '{"seed":1e-999}', '{"seed":-0}', ' '.repeat(300_000),
]; // prettier-ignore

describe('what is wrong with a document', () => {
  it('is told in Spanish whatever it is', () => {
    const all = sentences();
    expect(all.length).toBeGreaterThan(25);
    expect(all.filter((says) => problem(says) === says)).toEqual([]);
  });

  it.each(texts.map((text) => [text.slice(0, 20), text]))(
    'is told in Spanish of a text that cannot be read, as %j',
    (_, text) => {
      const parsed = parseScenario(text);
      if (!('problems' in parsed)) throw new Error('A text that says nothing was taken for an exercise.');
      const [{ says }] = parsed.problems;
      expect(problem(says)).not.toBe(says);
    },
  );

  it('keeps the figures of what is wrong', () => {
    const parsed = parseScenario({ format: 'stillmain-scenario', version: 2 });
    if (!('problems' in parsed)) throw new Error('A document of two entries was taken for an exercise.');
    expect(parsed.problems.map(({ says }) => problem(says))).toContain('Falta esta entrada.');
    expect(problem('The number must be at most 100; it is 250.')).toBe(
      'El número debe ser como mucho 100; es 250.',
    );
  });
});
