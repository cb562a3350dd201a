import { digestOfValue } from '../../core/run/index.ts';
import { parseScenario, type Problem, type Scenario } from '../../core/scenario/index.ts';
import type { KeptExercise, KeptProof } from '../../store/index.ts';
import type { SectionId } from '../address.ts';
import type { Shelf } from '../shelf.svelte.ts';
import { momentNow } from '../shelf/state.ts';
import type { BenchKey } from '../words/en/index.ts';
import { sectionOf, type FieldPath } from './fields.ts';
import { follow } from './follow.ts';
import { done, goneTo, historyOf, stateOf, type History } from './history.ts';
import { plainPath, writeAt } from './path.ts';

/** What a change is called in the list of changes. */
export interface Mark {
  readonly key: BenchKey;
  readonly slots?: Readonly<Record<string, string | number>>;
}

/** All that a change can change. */
interface Written {
  readonly document: Scenario;
  readonly notes: string;
}

/** An exercise under work: every change is one that can be taken back, and is kept before it is called kept. */
export class Draft {
  private readonly shelf: Shelf;
  readonly id: string;
  history = $state.raw<History<Mark, Written>>({ steps: [], at: 0 });
  proof = $state.raw<KeptProof | null>(null);
  keeping = $state<'kept' | 'keeping' | 'failed'>('kept');
  /** Why the last change could not be kept. */
  why = $state('');
  private lastKept: Promise<void> = Promise.resolve();
  private changes = 0;

  constructor(shelf: Shelf, { id, document, notes, proof }: KeptExercise) {
    this.shelf = shelf;
    this.id = id;
    this.proof = proof;
    this.history = historyOf<Mark, Written>({ key: 'mark.opened' }, { document, notes });
  }

  private readonly written = $derived(stateOf(this.history));
  readonly document = $derived(this.written.document);
  readonly notes = $derived(this.written.notes);
  private readonly parsed = $derived(parseScenario(this.document));
  /** The exercise where it is one; null while something is wrong with it. */
  readonly scenario = $derived('scenario' in this.parsed ? this.parsed.scenario : null);
  readonly problems = $derived.by((): readonly Problem[] =>
    'problems' in this.parsed
      ? this.parsed.problems.map(({ where, says }) => ({ where: plainPath(where), says }))
      : [],
  );
  readonly digest = $derived(digestOfValue(this.document));
  /** The proof that counts for the document as it stands, or null. */
  readonly proofNow = $derived(this.proof?.digest === this.digest ? this.proof.proof : null);

  problemsAt(path: string): readonly Problem[] {
    return this.problems.filter(({ where }) => where === path || where.startsWith(`${path}[`));
  }

  problemsIn(section: SectionId): number {
    return this.problems.filter(({ where }) => sectionOf(where) === section).length;
  }

  /** Writes one entry of the document. */
  set(path: string, to: unknown, mark: Mark): void {
    this.change(mark, writeAt(this.document, path, to));
  }

  /** The same, of a place that has a label. */
  setField(path: FieldPath, at: string, to: unknown): void {
    this.set(at, to, { key: `field.${path}` });
  }

  /** Another document, with what goes along with the change. */
  change(mark: Mark, document: Scenario): void {
    this.write(mark, { document: follow(this.document, document), notes: this.notes });
  }

  setNotes(notes: string): void {
    this.write({ key: 'section.notes' }, { document: this.document, notes });
  }

  keepProof(proof: KeptProof): void {
    this.proof = proof;
    this.keep();
  }

  goTo(at: number): void {
    const next = goneTo(this.history, at);
    if (next.at === this.history.at) return;
    this.history = next;
    this.keep();
  }

  undo(): void {
    this.goTo(this.history.at - 1);
  }

  redo(): void {
    this.goTo(this.history.at + 1);
  }

  private write(mark: Mark, written: Written): void {
    this.history = done(this.history, mark, written);
    this.keep();
  }

  /** One after the other, so that the last change is the one that stays. */
  private keep(): void {
    const exercise: KeptExercise = {
      id: this.id,
      document: this.document,
      notes: this.notes,
      workable: this.scenario !== null,
      proof: this.proof,
      changedAt: momentNow(),
    };
    const change = (this.changes += 1);
    this.keeping = 'keeping';
    this.lastKept = this.lastKept.then(async () => {
      try {
        await this.shelf.keep(exercise);
        if (change === this.changes) this.keeping = 'kept';
      } catch (reason) {
        this.why = reason instanceof Error ? reason.message : String(reason);
        this.keeping = 'failed';
      }
    });
  }
}
