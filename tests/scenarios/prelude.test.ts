import { describe, expect, it } from 'vitest';
import { drive, steady, steadyUpTo } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import {
  begin,
  givenBy,
  integrity,
  parseRecord,
  preludeProblem,
  recordText,
  replay,
  sealRecord,
} from '../../src/core/run/index.ts';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';
import { exercise } from '../scenario/exercise.ts';

const proving = ((): Scenario => {
  const whole = exercise();
  return {
    ...whole,
    kind: 'drill',
    family: 'drill',
    drill: { from: 's3', to: 's3' },
    prelude: [...drive(whole, steadyUpTo('s3')).entries],
    holdPoints: whole.holdPoints.filter(({ id }) => id === 'H2'),
  };
})();

describe('a run that begins mid-job', () => {
  const { entries, run } = drive(proving, steady);
  const record = sealRecord(proving, entries, run);

  it('stands as the crew before left it, with their facts told and their hands free', () => {
    const start = begin(proving);
    expect(start.rig.stack.map((piece) => piece.kind)).toEqual(['isolationValve']);
    expect(start.clockS).toBe(start.busyUntilS);
    expect(givenBy(proving)).toEqual({
      facts: start.facts.length,
      actions: proving.prelude.length,
      atS: start.clockS,
    });
  });

  it('is scored for what came after alone: forty points hang on the one hold point of the drill', () => {
    const assessment = judge(proving, record);
    expect([assessment.verdict, assessment.ending, assessment.score]).toEqual(['pass', 'complete', 100]);
    expect(assessment.holdPoints.map((h) => [h.id, h.outcome])).toEqual([['H2', 'held']]);
    expect(assessment.actions).toBe(entries.length);
    const handedOver = judge(proving, { entries: [{ atS: begin(proving).clockS, action: { kind: 'finish' } }] });
    expect(handedOver.findings.map((f) => [f.id, f.points])).toEqual([['holdNotReached', 40]]);
  });

  it('does not hold a slip of the crew before against the trainee, and holds their own', () => {
    const slipped = structuredClone(proving);
    const tap = slipped.prelude.findIndex((entry) => entry.action.kind === 'piece.inspect');
    slipped.prelude.splice(tap, 1);
    expect(judge(slipped, record).findings.map((f) => f.id)).not.toContain('usedUninspected');
    const blind = entries.filter(({ action }) => action.kind !== 'leakFluid.apply');
    expect(judge(proving, { entries: blind }).verdict).toBe('critical');
  });

  it('has the prelude under its chain: another one gives the record away', () => {
    const text = recordText(record);
    expect(parseRecord(text).state).toBe('sound');
    expect(integrity(record, replay(proving, entries, undefined, record.endS))).toBe('same');
    const altered = text.replace('"task":"permit"', '"task":"ladder"');
    expect(altered).not.toBe(text);
    expect(parseRecord(altered).state).toBe('altered');
  });

  it('is refused with its place where the prelude holds an act that no hand could have done', () => {
    const broken = structuredClone(proving);
    broken.prelude.splice(3, 0, { ...broken.prelude[3], action: { kind: 'rod.hold', held: true } });
    expect(preludeProblem(broken)?.where).toBe('prelude[3].action');
    const { state } = parseRecord(recordText(sealRecord(broken, entries, run)));
    expect(state).toBe('unusable');
  });

  it('says from where to where it goes, and only a drill does', () => {
    const asked = (change: Partial<Scenario>) => {
      const parsed = parseScenario({ ...structuredClone(proving), ...change });
      return 'problems' in parsed ? parsed.problems.map((p) => p.where) : [];
    };
    expect(asked({})).toEqual([]);
    expect(asked({ kind: 'job' })).toEqual(['drill']);
    expect(asked({ drill: { from: 's6', to: 's3' } })).toEqual(['drill.to']);
  });
});
