import type { RunRow } from '../../core/review/index.ts';
import type { Desk } from '../../store/index.ts';
import { performModel } from '../intake/workers.ts';
import { whenWord, whoWord } from '../table/wordRow.ts';
import { word } from '../words/word.svelte.ts';
import { performOther } from './open.ts';
import { perform, type DeskSample, type Reviewed } from './perform.ts';
import { alignedS, pairStages, stagesOf, type StagePair } from './stages.ts';

const model = 'model';
/** Runs offered for comparison: more would be a list nobody reads. */
const mostOffered = 50;

/** The other run that this one is laid beside. */
export class Comparison {
  chosen = $state('');
  state = $state<'none' | 'working' | 'failed' | 'there'>('none');
  pairs = $state.raw<readonly StagePair[]>([]);
  /** The other run's chart on this run's clock. */
  aligned = $state.raw<readonly DeskSample[] | null>(null);
  private readonly desk: Desk;
  private readonly row: RunRow;
  private readonly one: Reviewed | null;

  constructor(desk: Desk, row: RunRow, one: Reviewed | null) {
    this.desk = desk;
    this.row = row;
    this.one = one;
  }

  /** What can be compared with: the model run, then believed runs of the same exercise. */
  choicesOf(rows: readonly RunRow[]): readonly { readonly id: string; readonly name: string }[] {
    const others = rows
      .filter(
        ({ digest, scenarioId, integrity }) =>
          digest !== this.row.digest && scenarioId === this.row.scenarioId && integrity === 'same',
      )
      .slice(0, mostOffered)
      .map((other) => ({ id: other.digest, name: `${whoWord(other)}, ${whenWord(other)}` }));
    return [{ id: model, name: word('compare.model') }, ...others];
  }

  async choose(id: string): Promise<void> {
    this.chosen = id;
    this.aligned = null;
    this.pairs = [];
    this.state = id === '' ? 'none' : 'working';
    if (id === '' || this.one === null) return;
    try {
      const other = id === model ? await modelOf(this.one) : await performOther(this.desk, id);
      if (this.chosen !== id) return;
      if (other === null) this.state = 'failed';
      else this.lay(this.one, other);
    } catch {
      if (this.chosen === id) this.state = 'failed';
    }
  }

  private lay(one: Reviewed, other: Reviewed): void {
    const pairs = pairStages(stagesOf(one.end), one.end.clockS, stagesOf(other.end), other.end.clockS);
    this.pairs = pairs;
    this.aligned = other.trace.flatMap((sample) => {
      const atS = alignedS(pairs, sample.atS);
      return atS === null ? [] : [{ ...sample, atS }];
    });
    this.state = 'there';
  }
}

async function modelOf({ scenario }: Reviewed): Promise<Reviewed | null> {
  let found: Reviewed | null = null;
  await performModel(scenario, (told) => {
    if (told.kind === 'performed') found = perform(scenario, told.entries, told.endS);
  }).done;
  return found;
}
