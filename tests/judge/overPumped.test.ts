import { describe, expect, it } from 'vitest';
import { PSI_PA } from '../../src/core/units/index.ts';
import { changing, deviate, indexOf, signs, steadyRun, type Played, type Step } from './play.ts';

/** The chamber pumped on by ten strokes after the last, then let down again before anything is read. */
function pumpedOver(last: 'H1' | 'H8', id: 'H2' | 'H9', ventedS: number): Played {
  const { entries } = steadyRun();
  const at = entries.reduce(
    (found, { action }, i) =>
      i > indexOf(signs(last)) && i < indexOf(signs(id)) && action.kind === 'pump.stroke' ? i : found,
    -1,
  );
  const over = (steps: readonly Step[]): readonly Step[] => [
    ...steps.slice(0, at + 1),
    { action: { kind: 'pump.stroke', strokes: 10 }, gapS: 2 },
    { action: { kind: 'vent.turn', open: 0.1 }, gapS: 16 },
    { action: { kind: 'vent.turn', open: -1 }, gapS: ventedS },
    ...steps.slice(at + 1),
  ];
  const held = deviate(over).run.facts.flatMap((f) =>
    f.fact === 'gauge.read' && f.gauge === 'head' && f.readingGaugePa > 30 * PSI_PA ? [f] : [],
  );
  const seat = id === 'H2' ? 'tee' : 'coupling';
  const readPsi = (held.find((f) => f.under.saddleOn === seat)?.readingGaugePa ?? 0) / PSI_PA;
  const field = id === 'H2' ? 'proof1' : 'proof2';
  const written = changing(
    (a) => a.kind === 'record.write' && a.field === field,
    () => ({ kind: 'record.write', field, value: `${readPsi.toFixed(1)} psig` }),
  );
  return deviate((steps) => written(over(steps)));
}

const highestPsi = ({ run }: Played): number =>
  Math.max(...run.facts.flatMap((f) => (f.fact === 'pumped' ? [f.headGaugePa / PSI_PA] : [])));

describe('a chamber pumped well over the main and let down again before it is read', () => {
  it('is found out at the second proof, where a rubber stopper is the bulkhead', () => {
    const played = pumpedOver('H8', 'H9', 9);
    expect(played.dropped).toEqual([]);
    expect(highestPsi(played)).toBeGreaterThan(35 + 10);
    const { assessment } = played;
    expect(assessment.findings.map((f) => [f.id, f.holdPoint, f.items])).toEqual([
      ['holdFalse', 'H9', ['neverOver']],
    ]);
    expect(assessment.verdict).toBe('critical');
  });

  it('is found out at the first proof, with the time at which it was over', () => {
    const played = pumpedOver('H1', 'H2', 8.5);
    expect(played.dropped).toEqual([]);
    const { assessment } = played;
    expect(assessment.findings.map((f) => f.id)).toEqual(['overPumped']);
    const first = played.run.facts.find((f) => f.fact === 'pumped' && f.headGaugePa > 41 * PSI_PA);
    expect(assessment.findings[0].atS).toBe(first?.atS);
  });

  it('counts what stood at the pump when the strokes were done, not before them', () => {
    const { facts } = pumpedOver('H8', 'H9', 9).run;
    const begun = facts.filter((f) => f.fact === 'done' && f.action.kind === 'pump.stroke');
    const ended = facts.filter((f) => f.fact === 'pumped');
    expect(ended).toHaveLength(begun.length);
    ended.forEach((f, i) => expect(f.atS).toBeGreaterThan(begun[i].atS));
  });
});
