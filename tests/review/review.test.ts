import { statement } from '@learninglocker/xapi-validation/dist/factory.js';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import {
  agreementOf,
  compareJudgements,
  contradiction,
  csvOfGroup,
  csvOfRuns,
  decisionJsonSchema,
  decisionText,
  digestOfDecision,
  groupOf,
  keyOf,
  noOpinion,
  parseDecision,
  rejudge,
  rowOf,
  statementsOf,
  weigh,
  yearsAfter,
  type Decision,
  type DecisionBody,
} from '../../src/core/review/index.ts';
import { ENGINE, recordText, sealRecord, chainOf } from '../../src/core/run/index.ts';
import { drive, steady } from '../../src/core/hands/index.ts';
import { reassess } from '../../src/core/review/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { decided, hastyFile, hastyRun, rowWith, steadyFile, steadyRun } from './runs.ts';

const there = <T>(value: T | null | undefined): T => {
  if (value === null || value === undefined) throw new Error('it is missing');
  return value;
};
const hasty = there(hastyRun.assessment);
const { cutScore } = exercise();
const signed = (body: DecisionBody): Decision => ({
  ...body,
  signature: { algorithm: 'Ed25519', publicKey: '0'.repeat(64), value: '0'.repeat(128) },
});

describe('a run of another engine', () => {
  it('is shown with what it says of itself, and not judged', () => {
    const { entries, run } = drive(exercise(), steady);
    const said = { verdict: 'fail', ending: 'none', score: 12 } as const;
    const other = { ...sealRecord(exercise(), entries, run, { said }), engine: `${ENGINE}-other` };
    const told = reassess(recordText({ ...other, chain: chainOf(other) }));
    expect([told.integrity, told.assessment]).toEqual(['differs', null]);
    expect(rowOf('o.json', told)).toMatchObject({ verdict: null, score: null, said, integrity: 'differs' });
  });
});

describe('an assessor’s opinion', () => {
  it('that holds nothing otherwise judges as the machine does', () => {
    for (const machine of [hasty, there(steadyRun.assessment)]) {
      const { assessor, stale } = weigh(machine, noOpinion, cutScore);
      expect([assessor.verdict, assessor.score, assessor.headings]).toEqual([
        machine.verdict,
        machine.score,
        machine.headings,
      ]);
      expect(stale).toEqual([]);
    }
  });

  it('gives back what a finding cost when it is set aside, and leaves the machine’s judgement as it was', () => {
    const before = JSON.stringify(hasty);
    const costly = there(
      hasty.findings.find(({ points, heading }) => points > 0 && hasty.headings[heading].got > 0),
    );
    const told = weigh(
      hasty,
      { setAside: [{ finding: keyOf(costly), reason: 'camera' }], added: [] },
      cutScore,
    );
    expect(told.assessor.score).toBeCloseTo(hasty.score + costly.points, 9);
    expect(told.assessor.setAside).toEqual([{ finding: costly, reason: 'camera' }]);
    expect(JSON.stringify(told.machine)).toBe(before);
  });

  it('passes a run when every finding is set aside only if it ended as intended', () => {
    const setAside = hasty.findings.map((finding) => ({ finding: keyOf(finding), reason: 'all of it' }));
    const { assessor } = weigh(hasty, { setAside, added: [] }, cutScore);
    expect(assessor.score).toBe(100);
    expect(assessor.verdict).toBe(hasty.endedAsIntended ? 'pass' : 'fail');
  });

  it('fails a run by a critical finding of the assessor’s own, and takes no more than a heading has', () => {
    const machine = there(steadyRun.assessment);
    const added = [
      {
        heading: 'kit',
        atS: 9,
        points: 90,
        critical: true,
        holdPoint: null,
        says: 'Ring swapped.',
        reason: 'seen',
      },
    ] as const;
    const { assessor } = weigh(machine, { setAside: [], added }, cutScore);
    expect([assessor.verdict, assessor.headings.kit.got]).toEqual(['critical', 0]);
    expect(assessor.score).toBeCloseTo(machine.score - machine.headings.kit.got, 9);
  });

  it('names what it was formed on when the judgement has changed since', () => {
    const finding = 'nothing|1|';
    expect(weigh(hasty, { setAside: [{ finding, reason: 'x' }], added: [] }, cutScore).stale).toEqual([
      finding,
    ]);
  });
});

describe('judging again after a change', () => {
  it('with nothing changed changes nothing', () => {
    const told = rejudge(steadyFile, {});
    expect('change' in told && told.change).toBeNull();
  });

  it('shows the verdict that turns on the least score to pass alone', () => {
    const { score } = there(steadyRun.assessment);
    const told = rejudge(steadyFile, { cutScore: Math.min(100, score + 0.01) });
    if (score >= 100) expect('change' in told && told.change).toBeNull();
    else
      expect('change' in told && told.change).toMatchObject({ verdict: ['pass', 'fail'], byCutScore: true });
  });

  it('with other weights tells which headings and findings cost otherwise, as judging anew would', () => {
    const weights = { holdPoints: 55, gasControl: 5 };
    const told = rejudge(hastyFile, { weights });
    if (!('after' in told)) throw new Error(told.refused);
    const scenario = { ...exercise(), weights: { ...exercise().weights, ...weights } };
    expect(told.after.headings.holdPoints.of).toBe(55);
    expect(told.change?.headings.map(({ id }) => id)).toContain('gasControl');
    expect(told.change?.score).toEqual([hasty.score, told.after.score]);
    expect(compareJudgements(hasty, told.after)).toEqual(told.change);
    const whole = rejudge(hastyFile, { scenario });
    expect('after' in whole && whole.after).toEqual(told.after);
  });

  it('is refused for other work, for weights that do not sum to 100, and for a run that is not believed', () => {
    const scenario = { ...exercise(), seed: exercise().seed + 1 };
    expect(rejudge(steadyFile, { scenario })).toMatchObject({ refused: 'otherWork' });
    expect(rejudge(steadyFile, { weights: { kit: 90 } })).toMatchObject({ refused: 'weights' });
    expect(rejudge(steadyFile.replace('Trainee 001', 'Trainee 009'), {})).toMatchObject({
      refused: 'notBelieved',
    });
  });
});

describe('a decision', () => {
  it('has the four entries of 49 CFR 192.807(a) (read in a copy) and five years of keeping', () => {
    const { qualification, keepUntil, machine, run } = decided();
    expect(qualification).toEqual({
      individual: 'Trainee 001',
      coveredTask: 'Abandon a service tee under pressure',
      on: '2026-11-25',
      method: 'simulation',
    });
    expect([keepUntil, machine.integrity, run.digest]).toEqual(['2032-11-25', 'same', steadyRun.fileDigest]);
    expect([yearsAfter('2028-02-29', 5), yearsAfter('2028-02-29', 4)]).toEqual(['2033-03-01', '2032-02-29']);
  });

  it('reads back as it was written, also by its published schema', () => {
    const decision = signed(decided());
    expect(parseDecision(decisionText(decision))).toEqual({ decision });
    const valid = new Ajv2020({ strict: false }).compile(decisionJsonSchema());
    valid(decision);
    expect(valid.errors).toBeNull();
    expect(valid({ ...decision, qualification: { ...decision.qualification, method: 'hearsay' } })).toBe(
      false,
    );
  });

  it('is refused where it contradicts itself, with the place', () => {
    const where = (changes: Partial<DecisionBody>) => contradiction(decided(changes))?.where;
    expect(where({ validity: { from: '2027-01-01', until: '2026-01-01' } })).toBe('validity.until');
    expect(where({ decision: 'notYet' })).toBe('validity');
    expect(where({ machine: { ...decided().machine, integrity: 'altered' } })).toBe('decision');
    expect(where({ replaces: '0'.repeat(64) })).toBe('replacesWhy');
    expect(where({ keepUntil: '2026-11-24' })).toBe('keepUntil');
    expect(where({})).toBeUndefined();
    const text = decisionText(signed(decided()));
    for (const bad of [`${text} `, text.replace('"version":1', '"version":2'), '{', text.replace('Z"', '"')])
      expect('problem' in parseDecision(bad), bad.slice(0, 30)).toBe(true);
  });

  it('counts once for each assessor when two are compared, the one that stands', () => {
    const by = (name: string, run: string, changes: Partial<DecisionBody> = {}) =>
      signed(decided({ assessor: { name, role: 'r' }, run: { ...decided().run, digest: run }, ...changes }));
    const [one, two] = ['1'.repeat(64), '2'.repeat(64)];
    const first = by('A', one);
    const changed = by('A', one, {
      decision: 'notYet',
      validity: null,
      replaces: digestOfDecision(first),
      replacesWhy: 'seen again',
    });
    const told = agreementOf([first, changed, by('A', two), by('B', one), by('B', two)], 'A', 'B');
    expect([told.n, told.observed]).toEqual([2, 0.5]);
  });
});

describe('a group', () => {
  const held = (id: 'H1' | 'H2', outcome: 'held' | 'missed' | 'false' | 'notReached') => ({
    id,
    outcome,
    atS: 1,
  });
  const rows = [
    rowWith({
      person: 'A',
      attempt: 1,
      score: 50,
      verdict: 'fail',
      holdPoints: [held('H1', 'missed'), held('H2', 'notReached')],
    }),
    rowWith({
      person: 'A',
      attempt: 2,
      score: 90,
      verdict: 'pass',
      holdPoints: [held('H1', 'held'), held('H2', 'held')],
    }),
    rowWith({
      person: 'B',
      attempt: 1,
      score: 70,
      verdict: 'critical',
      holdPoints: [held('H1', 'held'), held('H2', 'false')],
    }),
    rowWith({ person: 'C', integrity: 'altered' }),
  ];
  const group = groupOf(rows);

  it('is told small, with what was left out', () => {
    expect([group.runs, group.people, group.leftOut, group.small]).toEqual([3, 2, 1, true]);
    expect(group.passed.count).toBe(1);
  });

  it('ranks hold points by how often they failed of those who came to them', () => {
    expect(
      group.holdPoints.map(({ id, reached, failed, falselySigned }) => [id, reached, failed, falselySigned]),
    ).toEqual([
      ['H2', 2, 1, 1],
      ['H1', 3, 1, 0],
    ]);
    expect(group.holdPoints[0].interval?.low).toBeLessThan(0.5);
  });

  it('shows each person’s change and cells', () => {
    expect(group.attempts[0]).toMatchObject({ person: 'A', change: 40, perAttempt: 40 });
    expect(group.attempts[1]).toMatchObject({ person: 'B', change: null, perAttempt: null });
    expect(group.meanByAttempt).toEqual([
      { attempt: 1, n: 2, mean: 60 },
      { attempt: 2, n: 1, mean: 90 },
    ]);
    expect(group.matrix.cells[0]).toEqual([
      { reached: 2, failed: 1 },
      { reached: 1, failed: 0 },
    ]);
  });

  it('of nobody is told without figures', () => {
    const empty = groupOf([]);
    expect([empty.runs, empty.alpha, empty.passed.interval]).toEqual([0, null, null]);
  });
});

describe('exports', () => {
  it('write a table that a spreadsheet reads back and takes for no formula', () => {
    const text = csvOfRuns([rowWith({ file: 'a,"b".json', person: '=2+3' })]);
    const [head, line, end] = text.split('\r\n');
    expect([head.split(',').slice(0, 3), end]).toEqual([['digest', 'file', 'person'], '']);
    expect(line).toContain(`,"a,""b"".json",'=2+3,`);
    expect(csvOfGroup(groupOf([])).split('\r\n')).toHaveLength(2);
  });

  const options = { homePage: 'https://harrowvalegas.example', at: '2026-11-25T12:00:00Z' };

  it('write xAPI statements that an independent judge finds nothing wrong with', () => {
    for (const told of [steadyRun, hastyRun]) {
      const statements = statementsOf(rowOf('x.json', told), options);
      expect(statements.length).toBeGreaterThan(5);
      for (const one of statements) expect(statement(one, ['statement'])).toEqual([]);
      expect(new Set(statements.map(({ id }) => id)).size).toBe(statements.length);
    }
    const [one] = statementsOf(rowOf('x.json', steadyRun), options);
    expect(statement({ ...one, timestamp: 'yesterday' }, ['statement'])).not.toEqual([]);
    expect(statement({ ...one, id: 'run' }, ['statement'])).not.toEqual([]);
  });

  it('give the same statements again, and none for a run nobody is named in or that is not believed', () => {
    const row = rowOf('x.json', steadyRun);
    expect(statementsOf(row, options)).toEqual(statementsOf(row, options));
    expect(statementsOf({ ...row, person: null }, options)).toEqual([]);
    expect(
      statementsOf(rowOf('x.json', reassess(steadyFile.replace('Trainee 001', 'Trainee 009'))), options),
    ).toEqual([]);
  });
});
