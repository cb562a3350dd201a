import { noOpinion } from '../../core/review/index.ts';
import {
  archiveText,
  byTime,
  keepable,
  keptBecause,
  type KeptDecision,
  type KeptFile,
  type KeptPapers,
} from './rules.ts';
import { MustBeKept, type Desk } from './types.ts';

/** Keeps a desk for as long as the page is open: for browsers that refuse storage. */
export function openDeskMemory(notKept: string): Desk {
  const files = new Map<string, KeptFile>();
  const papers = new Map<string, KeptPapers>();
  let decisions: readonly KeptDecision[] = [];

  const paperOf = (digest: string): KeptPapers =>
    papers.get(digest) ?? { digest, opinion: noOpinion, notes: [] };
  const on = (digest: string) => decisions.filter((kept) => kept.runDigest === digest);

  function keep(digest: string, changes: Partial<KeptPapers>): void {
    papers.set(digest, { ...paperOf(digest), ...changes });
    changed(digest);
  }

  function changed(digest: string): void {
    const file = files.get(digest);
    if (file) files.set(digest, { ...file, exported: false });
  }

  return {
    notKept,
    async takeIn(handedIn) {
      for (const { row, bytes } of handedIn) {
        const { digest } = row;
        if (!files.has(digest)) files.set(digest, { digest, row, bytes, exported: false });
      }
    },
    listRows: async () => [...files.values()].map(({ row }) => row),
    async keepRows(lines) {
      for (const row of lines) {
        const file = files.get(row.digest);
        if (file) files.set(row.digest, { ...file, row, exported: false });
      }
    },
    findBytes: async (digest) => files.get(digest)?.bytes,
    findOpinion: async (digest) => paperOf(digest).opinion,
    listBegun: async () => [...papers.keys()],
    keepOpinion: async (digest, opinion) => keep(digest, { opinion }),
    listNotes: async (digest) => paperOf(digest).notes,
    keepNotes: async (digest, notes) => keep(digest, { notes }),
    async decide(decision) {
      decisions = [...decisions, keepable(decision, decisions)];
      changed(decision.run.digest);
    },
    listDecisions: async () => [...decisions].sort(byTime).map(({ decision }) => decision),
    async exportAll() {
      const text = archiveText([...files.values()], [...papers.values()], decisions);
      for (const [digest, file] of files) files.set(digest, { ...file, exported: true });
      return text;
    },
    keptBecause: async (digest, today) => keptBecause(files.get(digest), on(digest), today),
    async remove(digest, today) {
      const why = keptBecause(files.get(digest), on(digest), today);
      if (why !== null) throw new MustBeKept(why);
      files.delete(digest);
      papers.delete(digest);
      decisions = decisions.filter((kept) => kept.runDigest !== digest);
    },
  };
}
