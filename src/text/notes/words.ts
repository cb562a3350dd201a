import type { NoteId } from '../../core/prove/index.ts';

/** What a note says, and what it suggests; `{slots}` are filled with its numbers and what it is about. */
export type NoteWords = Readonly<Record<NoteId, { readonly says: string; readonly suggests: string }>>;
