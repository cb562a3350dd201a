import { describe, expect, it } from 'vitest';
import { steady } from '../../src/core/hands/index.ts';
import { notExplored } from '../../src/core/prove/abstract/index.ts';
import { holdPointNotes } from '../../src/core/prove/fair.ts';
import { prove, type Note } from '../../src/core/prove/index.ts';
import { searchNotes } from '../../src/core/prove/searchNotes.ts';
import { tryHand } from '../../src/core/prove/tryHands.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { psi } from '../../src/core/units/index.ts';
import { exercise, type Mutable as ScenarioDraft } from '../judge/play.ts';
import { shipped } from '../scenarios/shipped.ts';

/** A few states and slips are enough here: search and slips have tests of their own. */
const FEW_STATES = 200;
const FEW_SLIPS = 12;

const notesOn = (change: (scenario: ScenarioDraft) => void): readonly Note[] =>
  prove(exercise(change), undefined, FEW_STATES, FEW_SLIPS).notes.filter((note) => note.id !== 'searchOpen');

/** Eight ways to make the base job one that no crew can finish, and the field where it must be mended. */
const unsolvable: readonly (readonly [string, string, (scenario: ScenarioDraft) => void])[] = [
  ['the main above the rating', 'job.system.mainPressureGaugePa', (s) => {
    s.job.system.mainPressureGaugePa = psi(66);
    s.job.system.orderPressureGaugePa = psi(66);
  }],
  ['a boss beyond use', 'job.workpiece.boss', (s) => (s.job.workpiece.boss = 'beyondUse')],
  ['a wall too thin under the chains', 'job.workpiece.wallSound', (s) => (s.job.workpiece.wallSound = false)],
  ['wrap that may hold asbestos', 'job.workpiece.wrap', (s) => (s.job.workpiece.wrap = 'suspect')],
  ['a top plug that no wrench moves', 'job.workpiece.plugBreakNm', (s) => (s.job.workpiece.plugBreakNm = 600)],
  ['a main far from its order', 'job.system.orderPressureGaugePa', (s) => {
    s.job.system.orderPressureGaugePa = psi(20);
  }],
  ['seat rings that are all stamped with a lie', 'job.kit', (s) => {
    for (const piece of s.job.kit) if (piece.kind === 'seatRing') piece.trueSize = '3/4';
  }],
  ['a time limit shorter than a steady crew needs', 'timeLimitS', (s) => (s.timeLimitS = 3600)],
]; // prettier-ignore

describe('a proof of an exercise', () => {
  it('has nothing to say against the base job but that a short search is no search', () => {
    const proof = prove(exercise(), undefined, FEW_STATES, FEW_SLIPS);
    expect(proof.finishable).toBe(true);
    expect(proof.notes.map((note) => note.id)).toEqual(['searchOpen']);
    expect(proof.proved).toBe(false);
    const others = Object.entries(proof.hands).filter(([name]) => name !== 'steady');
    expect(others.map(([, hand]) => hand.verdict)).not.toContain('pass');
  });

  it.each(unsolvable)('refuses %s, at %s', (_, field, change) => {
    const notes = notesOn(change);
    expect(notes.filter((note) => note.grave).map((note) => note.field)).toContain(field);
  });

  it('calls a bad ending asked for what it is', () => {
    const notes = notesOn((s) => (s.intendedEnding = 'referred'));
    expect(notes.map((note) => [note.field, note.id])).toContainEqual(['intendedEnding', 'endsOtherwise']);
  });

  it('names a weight that is unfair', () => {
    const notes = notesOn((s) => {
      Object.assign(s.weights, { holdPoints: 10, gasControl: 5, technique: 5, kit: 5, abnormal: 75 });
    });
    expect(notes.map((note) => [note.field, note.id])).toEqual(
      expect.arrayContaining([
        ['weights.abnormal', 'headingHeavy'],
        ['weights.abnormal', 'weightWithoutCause'],
      ]),
    );
  });

  it('names one hold point that decides its heading, and one that is missing', () => {
    const notes = notesOn((s) => {
      s.holdPoints = s.holdPoints.filter((hold) => hold.id !== 'H4');
      s.holdPoints[0].weight = 100;
    });
    expect(notes.map((note) => [note.field, note.id, note.about])).toEqual(
      expect.arrayContaining([
        ['holdPoints.0.weight', 'holdPointHeavy', 'H1'],
        ['holdPoints', 'holdPointLeftOut', 'H4'],
      ]),
    );
  });

  it('tells of each planted fault how a crew meets it, and what catches one that never looks', () => {
    const proof = prove(
      exercise((s) => {
        s.faults = [
          { fault: 'valvePassing', on: 'isolationValve', when: { trigger: 'start' } },
          { fault: 'oRingNicked', on: 'testHead', when: { trigger: 'start' } },
        ];
      }),
      undefined,
      FEW_STATES,
      FEW_SLIPS,
    );
    expect(proof.faults.map((fault) => [fault.id, fault.felt])).toEqual([
      ['valvePassing', true],
      ['oRingNicked', true],
    ]);
    for (const fault of proof.faults) expect(fault.caughtBy.length, fault.id).toBeGreaterThan(0);
  });

  it('says of a renewal how far dead ends were looked for, and asks for none of the hold points it has not', () => {
    const renewal = shipped('renew-1in-tee-on-4in-main');
    const search = { ...notExplored, closed: true, states: 3 };
    expect(searchNotes(renewal, search).map((note) => [note.field, note.id, note.grave])).toEqual([
      ['work', 'renewalUnsearched', false],
    ]);
    expect(searchNotes(exercise(), search)).toEqual([]);
    const leftOut = (scenario: Scenario): readonly (string | null)[] =>
      holdPointNotes(scenario, tryHand(scenario, steady))
        .filter((note) => note.id === 'holdPointLeftOut')
        .map((note) => note.about);
    expect(leftOut(renewal)).toEqual([]);
    const holdPoints = renewal.holdPoints.filter((hold) => hold.id !== 'R4');
    expect(leftOut({ ...renewal, holdPoints })).toEqual(['R4']);
  });

  it('counts the slips that are noticed, on a sample spread over all there are', () => {
    const { noticing } = prove(exercise(), undefined, FEW_STATES, FEW_SLIPS);
    if (noticing === null) throw new Error('A sound job was not tried with slips.');
    expect(noticing.tried).toBeGreaterThan(FEW_SLIPS / 2);
    expect(noticing.tried).toBeLessThanOrEqual(FEW_SLIPS);
    expect(noticing.of).toBeGreaterThan(100);
    expect(noticing.share).toBeGreaterThan(0.85);
    expect(noticing.punished).toBe(0);
    expect(noticing.missed.length).toBeLessThanOrEqual(1);
  });

  it('says so where slips go unnoticed', () => {
    const notes = notesOn((s) => {
      for (const hold of s.holdPoints) Object.assign(hold, { critical: false, weight: 0.01 });
    });
    expect(notes.map((note) => note.id)).toContain('fewNoticed');
  });

  it('looks for neither dead ends nor slips where a steady crew does not pass', () => {
    const { explored, noticing, proved } = prove(exercise((s) => (s.job.workpiece.boss = 'beyondUse')));
    expect([explored.states, explored.closed, noticing, proved]).toEqual([0, false, null, false]);
  });

  it('stops where it is told to, and says that it did', () => {
    const told: string[] = [];
    const proof = prove(exercise(), (part) => {
      told.push(part);
      return part === 'hands';
    });
    expect(proof.explored.closed).toBe(false);
    expect(proof.proved).toBe(false);
    expect(told.filter((part) => part === 'search')).toHaveLength(1);
    expect(proof.noticing).toBeNull();
  });
});
