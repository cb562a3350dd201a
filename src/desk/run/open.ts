import { reassess, type Opinion, type Reassessed } from '../../core/review/index.ts';
import type { Desk, Note } from '../../store/index.ts';
import { perform, type Reviewed } from './perform.ts';

/** A run laid out for review. */
export interface OpenRun {
  readonly bytes: Uint8Array;
  readonly reassessed: Reassessed;
  /** The run performed again as far as it goes; null where no run can be read. */
  readonly reviewed: Reviewed | null;
  readonly opinion: Opinion;
  readonly notes: readonly Note[];
}

/** Opens a run of this desk; null where there is none of that digest. */
export async function openRun(desk: Desk, digest: string): Promise<OpenRun | null> {
  const [bytes, opinion, notes] = await Promise.all([
    desk.findBytes(digest),
    desk.findOpinion(digest),
    desk.listNotes(digest),
  ]);
  if (bytes === undefined) return null;
  const reassessed = reassess(bytes);
  return { bytes, reassessed, reviewed: performed(reassessed), opinion, notes };
}

/** Performs the run of another file of this desk, to be compared with. */
export async function performOther(desk: Desk, digest: string): Promise<Reviewed | null> {
  const bytes = await desk.findBytes(digest);
  return bytes === undefined ? null : performed(reassess(bytes));
}

function performed({ record }: Reassessed): Reviewed | null {
  return record === null ? null : perform(record.scenario, record.entries, record.endS);
}
