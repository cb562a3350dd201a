import type { Sample } from '../../session/index.ts';

/** Every ground with the ink that stands on it. */
export const colours: readonly (readonly [string, string])[] = [
  ['--paper', '--ink'],
  ['--sheet', '--ink'],
  ['--inset', '--ink-soft'],
  ['--accent', '--accent-ink'],
  ['--accent-wash', '--accent'],
  ['--good-wash', '--good'],
  ['--warn-wash', '--warn'],
  ['--bad-wash', '--bad'],
];

/** A chamber pumped to the main's pressure and held, with a little gas in the hole at the end; invented. */
export const exampleTrace: readonly Sample[] = Array.from({ length: 61 }, (_, i) => ({
  atS: i * 10,
  mainGaugePa: 241_000,
  secondGaugePa: 241_000,
  headGaugePa: i < 6 ? null : Math.min(248_000, (i - 6) * 40_000),
  lelShare: i < 45 ? 0 : (i - 45) * 0.006,
}));

export const exampleMarks = [
  { atS: 120, name: 'H1', bad: false },
  { atS: 420, name: 'H2', bad: true },
] as const;
