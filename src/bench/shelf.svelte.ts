import type { Scenario } from '../core/scenario/index.ts';
import { freeName, keptFrom, openBench, type BenchStore, type KeptExercise } from '../store/index.ts';
import { shippedNames } from './shelf/shipped.ts';

/** The exercises of this browser, as the screens follow them. */
export class Shelf {
  readonly store: BenchStore;
  exercises = $state.raw<readonly KeptExercise[]>([]);
  /** The one deleted last, which can be brought back. */
  removed = $state.raw<KeptExercise | null>(null);

  private constructor(store: BenchStore) {
    this.store = store;
  }

  static async open(): Promise<Shelf> {
    const shelf = new Shelf(await openBench());
    await shelf.reread();
    return shelf;
  }

  async reread(): Promise<void> {
    this.exercises = await this.store.list();
  }

  find(id: string): KeptExercise | undefined {
    return this.exercises.find((one) => one.id === id);
  }

  /** A name like the one asked for that nothing shipped or kept here has. */
  free(name: string): string {
    return freeName(name, [...shippedNames, ...this.exercises.map(({ id }) => id)]);
  }

  /** Keeps a document under its own name. */
  async add(document: Scenario, notes = ''): Promise<KeptExercise> {
    const exercise = keptFrom(document, notes);
    await this.keep(exercise);
    return exercise;
  }

  async keep(exercise: KeptExercise): Promise<void> {
    await this.store.keep(exercise);
    await this.reread();
  }

  async remove(exercise: KeptExercise): Promise<void> {
    await this.store.remove(exercise.id);
    this.removed = exercise;
    await this.reread();
  }

  async restore(): Promise<void> {
    if (this.removed === null) return;
    await this.keep(this.removed);
    this.removed = null;
  }
}
