import type { Decision, RunRow } from '../core/review/index.ts';
import { openDesk, type Desk } from '../store/index.ts';
import { joined, setOf, standingOf, wordOf } from './listing.ts';
import type { Told } from './intake/orders.ts';
import type { Work } from './intake/workers.ts';
import { lineOf, type Line, type ReviewState } from './table/arrange.ts';

/** A file that could not be opened at all, and why. */
export interface Unread {
  readonly name: string;
  readonly why: string;
}

/** How far an intake has come. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** Kept together on the disk, so that hundreds of files are not hundreds of transactions. */
const keepTogether = 50;

/** Everything this desk holds, as the screens follow it. */
export class Shelf {
  readonly desk: Desk;
  rows = $state.raw<readonly RunRow[]>([]);
  decisions = $state.raw<readonly Decision[]>([]);
  begun = $state.raw<ReadonlySet<string>>(setOf([]));
  unread = $state.raw<readonly Unread[]>([]);
  progress = $state.raw<Progress | null>(null);
  /** Why something could not be kept, or null. */
  failed = $state<string | null>(null);
  private work: Work | null = null;

  private constructor(desk: Desk) {
    this.desk = desk;
  }

  /** Opens what is kept in this browser. */
  static async open(): Promise<Shelf> {
    const shelf = new Shelf(await openDesk());
    await shelf.reread();
    return shelf;
  }

  async reread(): Promise<void> {
    const [rows, decisions, begun] = await Promise.all([
      this.desk.listRows(),
      this.desk.listDecisions(),
      this.desk.listBegun(),
    ]);
    this.rows = rows;
    this.decisions = decisions;
    this.begun = setOf(begun);
  }

  /** Decisions that nothing has taken the place of, by the run they are about. */
  readonly standing = $derived(standingOf(this.decisions));

  readonly lines = $derived.by((): readonly Line[] =>
    this.rows.map((row) => lineOf(row, this.reviewOf(row.digest))),
  );

  private reviewOf(digest: string): ReviewState {
    return wordOf(this.standing.get(digest) ?? []) ?? (this.begun.has(digest) ? 'begun' : 'open');
  }

  /**
   * Takes in what workers judge, and keeps it as it comes. Resolves when all is in or it was stopped; what came until
   * then stays.
   */
  async takeIn(of: number, start: (tell: (told: Told) => void) => Work): Promise<void> {
    let waiting: { row: RunRow; bytes: Uint8Array }[] = [];
    let keeping = Promise.resolve();
    let done = 0;
    this.unread = [];
    this.failed = null;
    this.progress = { done, of };

    const keep = (): void => {
      const batch = waiting;
      waiting = [];
      keeping = keeping.then(async () => {
        await this.desk.takeIn(batch);
        this.rows = joined(
          this.rows,
          batch.map(({ row }) => row),
        );
      });
      keeping.catch((reason: unknown) => this.fail(reason));
    };

    try {
      this.work = start((told) => {
        done += 1;
        this.progress = { done, of };
        if (told.kind === 'unread') this.unread = [...this.unread, told];
        if (told.kind !== 'judged') return;
        waiting.push(told);
        if (waiting.length >= keepTogether) keep();
      });
      await this.work.done;
      if (waiting.length > 0) keep();
      await keeping;
    } catch (reason) {
      this.fail(reason);
    }
    this.work = null;
    this.progress = null;
  }

  /** Stops the intake under way. */
  stop(): void {
    this.work?.stop();
  }

  /** Notes that a review of a run is under way. */
  begin(digest: string): void {
    this.begun = setOf([...this.begun, digest]);
  }

  /** Keeps rows that were judged otherwise. */
  async replaceRows(rows: readonly RunRow[]): Promise<void> {
    await this.desk.keepRows(rows);
    this.rows = joined(this.rows, rows);
  }

  private fail(reason: unknown): void {
    this.failed = reason instanceof Error ? reason.message : String(reason);
  }
}
