import { describe, expect, it } from 'vitest';
import { digestOf } from '../../src/core/run/index.ts';
import type { Action } from '../../src/core/rig/index.ts';
import { openSitting, parseEvents, UnreadableSitting } from '../../src/session/index.ts';
import { paperJournal, yardScenario } from './yard.ts';

const scenario = yardScenario();
const readOrder: Action = { kind: 'site.do', task: 'readOrder' };
const unscrew: Action = { kind: 'plug.turn', turns: -1, holdBack: false };

function begun(journal = paperJournal()) {
  const sitting = openSitting(scenario, [], journal);
  sitting.begin();
  sitting.hold();
  return { sitting, journal };
}

describe('a sitting', () => {
  it('writes an act down before it shows as done', async () => {
    const { sitting, journal } = begun();
    const seen: [number, number][] = [];
    sitting.subscribe(() => seen.push([journal.events.length, sitting.view().entries.length]));
    await sitting.act(readOrder);
    expect(journal.events).toEqual([{ kind: 'acted', atS: 0, action: readOrder }]);
    for (const [written, shown] of seen) expect(written).toBeGreaterThanOrEqual(shown);
    expect(sitting.view().run.rig.site.done.readOrder).toBeDefined();
  });

  it('does not do what could not be written down, and says why', async () => {
    const { sitting, journal } = begun();
    journal.full = true;
    await sitting.act(readOrder);
    expect(sitting.view().run.rig.site.done.readOrder).toBeUndefined();
    expect(sitting.view().trouble).toBe('the disk is full');
    journal.full = false;
    await sitting.act(readOrder);
    expect(sitting.view().trouble).toBeNull();
    expect(sitting.view().entries).toHaveLength(1);
  });

  it('tells what hinders a hand, keeps nothing of it, and tells it again when tried again', async () => {
    const { sitting, journal } = begun();
    const pump: Action = { kind: 'pump.stroke', strokes: 1 };
    await sitting.act(pump);
    expect(sitting.view().refusal).toMatchObject({ hindrance: 'needsTestHead', number: 1 });
    await sitting.act(pump);
    expect(sitting.view().refusal?.number).toBe(2);
    expect(journal.events).toEqual([]);
  });

  it('lets the hands have their time before the next act begins', async () => {
    const { sitting } = begun();
    await Promise.all([sitting.act(readOrder), sitting.act({ kind: 'site.do', task: 'permit' })]);
    const [first, second] = sitting.view().entries;
    expect(second.atS).toBeGreaterThan(first.atS);
    expect(sitting.view().run.clockS).toBeGreaterThanOrEqual(sitting.view().run.busyUntilS);
  });

  it('keeps whether a second wrench holds back, whatever is done meanwhile', async () => {
    const { sitting, journal } = begun();
    expect(sitting.view().holdsBack).toBe(false);
    void sitting.holdBack(true);
    expect(sitting.view().holdsBack, 'at once').toBe(true);
    await sitting.act(readOrder);
    expect(openSitting(scenario, parseEvents(journal.events), journal).view().holdsBack).toBe(true);
    await sitting.rewind(0);
    await sitting.holdBack(false);
    expect(openSitting(scenario, parseEvents(journal.events), journal).view().holdsBack).toBe(false);
  });

  it('stands exactly where it stood when it is opened again from what was kept', async () => {
    const { sitting, journal } = begun();
    await sitting.act(readOrder);
    await sitting.wait(37);
    await sitting.act({ kind: 'gauge.zero', gauge: 'main' });
    await sitting.act({ kind: 'gauge.read', gauge: 'main' });
    const again = openSitting(
      scenario,
      parseEvents(JSON.parse(JSON.stringify(journal.events))),
      paperJournal(),
    );
    expect(digestOf(again.view().run)).toBe(digestOf(sitting.view().run));
    expect(again.view().entries).toEqual(sitting.view().entries);
    expect(again.view().phase).toBe('held');
  });

  it('refuses kept events that are not events, or that the rig would not do, naming the place', () => {
    expect(() =>
      parseEvents([{ kind: 'acted', atS: 0, action: readOrder }, { kind: 'danced' }]),
    ).toThrowError(expect.objectContaining({ index: 1 }));
    const impossible = { kind: 'acted', atS: 0, action: { kind: 'pump.stroke', strokes: 1 } } as const;
    expect(() => openSitting(scenario, [impossible], paperJournal())).toThrow(UnreadableSitting);
  });

  it('does not depend on how finely the screen cuts the time', async () => {
    const { sitting: coarse } = begun();
    const { sitting: fine } = begun();
    await coarse.act(unscrew);
    await fine.act(unscrew);
    await coarse.wait(60);
    fine.go(1);
    while (fine.view().run.clockS < coarse.view().run.clockS) {
      fine.tick(Math.min(0.37, coarse.view().run.clockS - fine.view().run.clockS));
    }
    expect(digestOf(fine.view().run)).toBe(digestOf(coarse.view().run));
  });

  it('stands still while held, and hurries only until hands act', async () => {
    const { sitting } = begun();
    const beforeS = sitting.view().run.clockS;
    sitting.tick(5);
    expect(sitting.view().run.clockS).toBe(beforeS);
    sitting.go(20);
    sitting.tick(1);
    expect(sitting.view().run.clockS).toBeCloseTo(beforeS + 20, 6);
    expect(sitting.view().phase).toBe('hurried');
    await sitting.act(readOrder);
    expect(sitting.view()).toMatchObject({ phase: 'running', pace: 1 });
  });

  it('breaks off a wait when gas begins to blow or the alarm sounds', async () => {
    const { sitting } = begun();
    const blows = () => sitting.view().run.facts.some((fact) => fact.fact === 'blow.began');
    for (let quarter = 0; quarter < 60 && !blows(); quarter += 1)
      await sitting.act({ kind: 'plug.turn', turns: -1 / 4, holdBack: false });
    expect(blows()).toBe(true);
    await sitting.wait(1800);
    expect(sitting.view().run.facts.at(-1)).toMatchObject({ fact: 'gas.alarm', step: 1 });
    expect(sitting.view().run.clockS - (sitting.view().run.facts.at(-1)?.atS ?? 0)).toBeLessThan(2.5);
  });

  it('goes back to a moment, keeps the given-up stretch for the chart, and does the same again', async () => {
    const { sitting, journal } = begun();
    await sitting.act(readOrder);
    const thenS = sitting.view().run.clockS;
    const digest = digestOf(sitting.view().run);
    await sitting.act(unscrew);
    await sitting.wait(30);
    await sitting.rewind(thenS);
    expect(digestOf(sitting.view().run)).toBe(digest);
    expect(sitting.view()).toMatchObject({ phase: 'held', entries: [{ action: readOrder }] });
    expect(sitting.view().abandoned).toHaveLength(1);
    const again = openSitting(scenario, parseEvents(journal.events), paperJournal());
    expect(digestOf(again.view().run)).toBe(digest);
    expect(again.view().abandoned).toEqual(sitting.view().abandoned);
  });

  it('takes back the last act alone when asked for the moment it began', async () => {
    const { sitting } = begun();
    await sitting.act(readOrder);
    await sitting.act({ kind: 'site.do', task: 'permit' });
    await sitting.rewind(sitting.view().entries.at(-1)?.atS ?? 0);
    expect(sitting.view().entries.map((entry) => entry.action)).toEqual([readOrder]);
  });

  it('ends in the debrief once the run has ended, and the clock stands', async () => {
    const { sitting } = begun();
    await sitting.act({ kind: 'refer', reason: 'other' });
    expect(sitting.view().phase).toBe('debrief');
    const endS = sitting.view().run.clockS;
    sitting.tick(3);
    expect(sitting.view().run.clockS).toBe(endS);
  });
});
