import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/judge/index.ts';
import { begin } from '../../src/core/run/index.ts';
import { knowsStage } from '../../src/practice/coach/fade.ts';
import { openSitting } from '../../src/session/index.ts';
import { freshRun } from '../../src/store/types.ts';
import { paperJournal, yardScenario } from '../session/yard.ts';

const scenario = yardScenario();
const finished = (...held: string[]) =>
  ({ ...freshRun(scenario), state: 'finished', verdict: 'pass', score: 90, held }) as const;

describe('the coach that fades', () => {
  it('shows a stage until its hold points were held twice, all of them', () => {
    expect(knowsStage([], 's6')).toBe(false);
    expect(knowsStage([finished('H4', 'H5')], 's6')).toBe(false);
    expect(knowsStage([finished('H4', 'H5'), finished('H4')], 's6')).toBe(false);
    expect(knowsStage([finished('H4', 'H5'), finished('H4', 'H5')], 's6')).toBe(true);
  });

  it('shows it again once the newest run has missed it', () => {
    expect(knowsStage([finished('H4'), finished('H4', 'H5'), finished('H4', 'H5')], 's6')).toBe(false);
  });
});

describe('asking the coach', () => {
  it('costs nothing where the exercise does not say so, and its points where it does', () => {
    const charged = { ...scenario, coach: { hintPoints: 2 } };
    expect(assess(begin(scenario), 3).findings.some(({ id }) => id === 'coachAsked')).toBe(false);
    expect(assess(begin(charged), 0).findings.some(({ id }) => id === 'coachAsked')).toBe(false);
    const finding = assess(begin(charged), 3).findings.find(({ id }) => id === 'coachAsked');
    expect(finding?.points).toBe(6);
    expect(finding?.heading).toBe('technique');
  });

  it('is not made unasked by going back', async () => {
    const sitting = openSitting(scenario, [], paperJournal());
    sitting.begin();
    await sitting.act({ kind: 'site.do', task: 'readOrder' });
    await sitting.ask();
    await sitting.rewind(0);
    expect(sitting.view().entries).toHaveLength(0);
    expect(sitting.view().asked).toBe(1);
  });
});

describe('an assessment', () => {
  it('knows no way back, no answer, no long wait and no hurry in which a needle moves unseen', async () => {
    const journal = paperJournal();
    const sitting = openSitting(scenario, [], journal, 'assessment');
    sitting.begin();
    await sitting.act({ kind: 'site.do', task: 'readOrder' });
    const before = sitting.view().run.clockS;
    await sitting.wait(300);
    expect(sitting.view().run.clockS - before).toBeCloseTo(60, 6);
    await sitting.rewind(0);
    await sitting.ask();
    expect(sitting.view().entries).toHaveLength(1);
    expect(sitting.view().asked).toBe(0);
    sitting.go(60);
    expect(sitting.view().pace).toBe(4);
  });

  it('ends when it is handed in, and stays ended when it is opened again', async () => {
    const journal = paperJournal();
    const sitting = openSitting(scenario, [], journal, 'assessment');
    sitting.begin();
    await sitting.handIn();
    expect(sitting.view().phase).toBe('debrief');
    expect(openSitting(scenario, journal.events, journal, 'assessment').view().phase).toBe('debrief');
  });
});
