import { describe, expect, it } from 'vitest';
import { languageShown, parsePreferences } from '../../src/panel/index.ts';

describe('what a person likes', () => {
  it('is taken back as it was kept', () => {
    const usual = parsePreferences({});
    const liked = { ...usual, language: 'es', theme: 'contrast', textPercent: 150, volume: 0, keys: false };
    expect(parsePreferences(JSON.parse(JSON.stringify(liked)))).toEqual(liked);
  });

  it.each([null, 3, 'dark', [], { theme: 'pink', textPercent: 900, volume: 7, keys: 'no', language: 'xx' }])(
    'gives way to what is usual where it is not among the choices: %j',
    (found) => {
      expect(parsePreferences(found)).toEqual(parsePreferences({}));
    },
  );

  it.each([
    [['es-MX', 'en'], 'es'],
    [['fr-CA', 'ES', 'en'], 'es'],
    [['en-GB', 'es'], 'en'],
    [['fr', 'de'], 'en'],
    [[], 'en'],
  ] as const)('asks the browser for a language, by its order %j: %s', (asked, expected) => {
    expect(languageShown('system', asked)).toBe(expected);
    expect(languageShown('es', asked)).toBe('es');
  });
});
