import { describe, expect, it } from 'vitest';
import { digestOf } from '../../src/core/run/index.ts';
import { momentAt, openSitting, performAgain } from '../../src/session/index.ts';
import { paperJournal, yardScenario } from './yard.ts';

describe('a run performed again', () => {
  it('passes through the very states that were worked through', async () => {
    const scenario = yardScenario();
    const sitting = openSitting(scenario, [], paperJournal());
    sitting.begin();
    sitting.hold();
    const stood: [number, string][] = [];
    for (const turns of [-1 / 12, -1, -1, 1 / 4]) {
      await sitting.act({ kind: 'plug.turn', turns, holdBack: true });
      await sitting.wait(4);
      stood.push([sitting.view().run.clockS, digestOf(sitting.view().run)]);
      await sitting.wait(7);
    }
    const { entries, run } = sitting.view();
    const again = performAgain(scenario, entries, run.clockS);
    expect(digestOf(again.end)).toBe(digestOf(run));
    for (const [atS, digest] of stood) expect(digestOf(momentAt(again, atS))).toBe(digest);
    expect(again.trace.at(-1)?.atS).toBe(run.clockS);
    expect(momentAt(again, 1e9).clockS).toBe(run.clockS);
  });
});
