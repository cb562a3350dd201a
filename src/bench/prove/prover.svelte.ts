import { withNoticing, type Noticing, type Proof } from '../../core/prove/index.ts';
import type { Draft } from '../edit/draft.svelte.ts';
import type { Part, Told } from './orders.ts';
import { perform, type Work } from './work.ts';

/** A proof under way: the search in one worker, the slips in another beside it. */
export class Prover {
  private readonly draft: Draft;
  running = $state<'quick' | 'whole' | null>(null);
  /** How far each part has come, 0 to 1. */
  progress = $state.raw<Readonly<Partial<Record<Part, number>>>>({});
  failed = $state<string | null>(null);
  private works: readonly Work[] = [];
  private proof: Proof | null = null;
  private noticing: Noticing | null = null;
  private awaited = 0;
  private digest = '';

  constructor(draft: Draft) {
    this.draft = draft;
  }

  /** Proves the exercise as it stands now, wholly or by its hands and faults alone. */
  start(whole: boolean): void {
    const { scenario, digest } = this.draft;
    if (scenario === null || this.running !== null) return;
    this.running = whole ? 'whole' : 'quick';
    this.progress = {};
    this.failed = null;
    this.proof = null;
    this.noticing = null;
    this.digest = digest;
    const orders = [
      { kind: 'prove', scenario, whole } as const,
      ...(whole ? [{ kind: 'notice', scenario } as const] : []),
    ];
    this.awaited = orders.length;
    this.works = orders.map((order) =>
      perform(
        order,
        (told) => this.hear(told),
        (why) => {
          this.stop();
          this.failed = why;
        },
      ),
    );
  }

  stop(): void {
    for (const work of this.works) work.stop();
    this.works = [];
    this.running = null;
  }

  private hear(told: Told): void {
    if (told.kind === 'progress') this.progress = { ...this.progress, [told.part]: told.share };
    if (told.kind === 'noticed') this.noticing = told.noticing;
    if (told.kind === 'proved') this.proof = told.proof;
    if (told.kind === 'noticed' || told.kind === 'proved') this.awaited -= 1;
    const { proof } = this;
    if (proof === null) return;
    // without a passing steady crew there is no model run, and nobody waits for slips from it
    if (this.awaited > 0 && proof.finishable) return;
    this.stop();
    this.draft.keepProof({
      digest: this.digest,
      proof: proof.finishable ? withNoticing(proof, this.noticing) : proof,
    });
  }
}
