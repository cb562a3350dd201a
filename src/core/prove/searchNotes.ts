import type { Scenario } from '../scenario/index.ts';
import type { Note, Proof } from './types.ts';

/** What a search for dead ends has to say, and how far it went. */
export function searchNotes({ work }: Scenario, explored: Proof['explored']): readonly Note[] {
  const { closed, states, witnessFailures, traps } = explored;
  const note = { field: 'job', grave: true, about: null } as const;
  if (!closed) return [{ ...note, id: 'searchOpen', numbers: { states } }];
  // the search knows the pieces of an abandonment; what a renewal puts in their place, only the hands show
  const short: Note = { ...note, field: 'work', id: 'renewalUnsearched', grave: false, numbers: {} };
  const about = traps[0]?.join(', ') ?? null;
  return [
    ...(work === 'abandon' ? [] : [short]),
    ...(witnessFailures === 0
      ? []
      : [{ ...note, id: 'deadEnd' as const, numbers: { witnessFailures }, about }]),
  ];
}
