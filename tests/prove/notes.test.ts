import { describe, expect, it } from 'vitest';
import { noteIds, type Note } from '../../src/core/prove/index.ts';
import { englishNotes, spanishNotes, wordNote } from '../../src/text/index.ts';

const slots = (text: string): readonly string[] =>
  [...text.matchAll(/\{(\w+)\}/g)].map(([, slot]) => slot).sort();

const numbers = {
  atS: 5, steadyS: 5000, timeLimitS: 3600, states: 3, witnessFailures: 2, score: 81.25, points: 3, share: 0.41,
  sum: 90, cutScore: 80, punished: 4,
}; // prettier-ignore

describe('a reviewer’s notes', () => {
  it.each(noteIds)('%s is said in both languages, with the same figures', (id) => {
    const note: Note = { id, field: 'weights', grave: true, about: 'H4', numbers };
    for (const part of ['says', 'suggests'] as const)
      expect(slots(spanishNotes[id][part])).toEqual(slots(englishNotes[id][part]));
    for (const said of [englishNotes, spanishNotes]) {
      const worded = wordNote(note, said);
      expect(`${worded.says} ${worded.suggests}`).not.toMatch(/[{}]/);
    }
  });
});
