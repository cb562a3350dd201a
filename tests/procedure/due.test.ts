import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/judge/index.ts';
import { due, dueReasons, type Due } from '../../src/core/procedure/index.ts';
import {
  advance,
  attempt,
  begin,
  could,
  read,
  type Attempted,
  type RunState,
} from '../../src/core/run/index.ts';
import type { Action, ReferReason } from '../../src/core/rig/index.ts';
import { drawInteger, PSI_PA, seedGenerator, type Generator } from '../../src/core/units/index.ts';
import { exercise, outcomeOf, steadyRun, type Mutable } from '../judge/play.ts';

const advised = (run: RunState): Due | null => due(run, (action) => could(run, action) === null, read(run));

/** Does whatever is due until the run ends; gives up when the advice goes in circles. */
function obey(start: RunState, most = 900): RunState {
  let run = start;
  for (let steps = 0; steps < most && run.rig.ending === null; steps += 1) {
    const next: Due | null = advised(run);
    if (next === null) break;
    if (next.action === null) {
      run = advance(run, run.clockS + (next.waitS ?? 1));
      continue;
    }
    const attempted: Attempted = attempt(run, next.action);
    if ('hindrance' in attempted) throw new Error(`${next.why}: ${attempted.hindrance}`);
    run = advance(attempted.run, attempted.run.busyUntilS);
  }
  return run;
}

const stops: readonly (readonly [string, (scenario: Mutable) => void, ReferReason])[] = [
  ['a main at 61 psig', aboveRating, 'pressureAboveRating'],
  ['a boss beyond use', beyondUse, 'bossBeyondUse'],
  ['suspect wrap', suspectWrap, 'suspectWrap'],
];

const jobs: readonly (readonly [string, (scenario: Mutable) => void])[] = [
  ['a main at 20 psig', (scenario) => setMain(scenario, 20)],
  ['a main at 55 psig', (scenario) => setMain(scenario, 55)],
  ['a main at 8 psig, by the manometer', lowMain],
  ['an NPS 3 main, with cradle blocks', smallMain],
];

function setMain(scenario: Mutable, pressurePsig: number): void {
  scenario.job.system.mainPressureGaugePa = pressurePsig * PSI_PA;
  scenario.job.system.orderPressureGaugePa = pressurePsig * PSI_PA;
}

function lowMain(scenario: Mutable): void {
  setMain(scenario, 8);
  scenario.limits.expectedHissS = 4.7;
}

function smallMain(scenario: Mutable): void {
  scenario.job.workpiece.mainNps = '3';
}

function aboveRating(scenario: Mutable): void {
  scenario.job.system.mainPressureGaugePa = 61 * PSI_PA;
}

function beyondUse(scenario: Mutable): void {
  scenario.job.workpiece.boss = 'beyondUse';
}

function suspectWrap(scenario: Mutable): void {
  scenario.job.workpiece.wrap = 'suspect';
}

describe('the coach', () => {
  it('leads somebody who only does what is due to a job complete and proved', () => {
    const assessment = assess(obey(begin(exercise())));
    expect(assessment.ending).toBe('complete');
    expect(assessment.verdict).toBe('pass');
    expect(assessment.score).toBeGreaterThanOrEqual(95);
  });

  it.each(jobs)('leads the same way on %s', (_, change) => {
    const assessment = assess(obey(begin(exercise(change))));
    expect(assessment.findings.filter((finding) => finding.critical)).toEqual([]);
    expect(assessment.verdict).toBe('pass');
  });

  it.each(stops)('stops and refers back at %s', (_, change, reason) => {
    const run = obey(begin(exercise(change)), 80);
    expect(run.rig.ending).toEqual({ kind: 'referred', reason });
    expect(outcomeOf(assess(run), 'H2')).toBe('notReached');
  });

  it('answers what a look round brings to light, and looks round again after each signature', () => {
    const flooded = exercise((scenario) => {
      scenario.job.troubles = [{ what: 'water', sinceS: 0, size: 0.3 }];
    });
    const run = obey(begin(flooded), 90);
    const at = (found: (fact: (typeof run.facts)[number]) => boolean): number => run.facts.findIndex(found);
    const seen = at((f) => f.fact === 'looked' && f.at === 'around' && (f.saw.signs ?? []).includes('water'));
    const pumped = at((f) => f.fact === 'site.done' && f.task === 'pumpOutWater');
    const signed = at((f) => f.fact === 'signed' && f.holdPoint === 'H1');
    expect(seen).toBeGreaterThan(-1);
    expect(pumped).toBeGreaterThan(seen);
    expect(signed).toBeGreaterThan(pumped);
    expect(run.facts.slice(signed).some((f) => f.fact === 'looked' && f.at === 'around')).toBe(true);
    expect(at((f) => f.fact === 'site.done' && f.task === 'secondPerson')).toBeGreaterThan(-1);
  });

  it('changes a detector that shows too little, and tests the other', () => {
    const unfit = exercise((scenario) => {
      scenario.job.troubles = [{ what: 'detectorUnfit', sinceS: 0, size: 0.5 }];
    });
    const run = obey(begin(unfit), 40);
    const bumps = run.facts.flatMap((f) => (f.fact === 'detector.bumped' ? [f] : []));
    expect(bumps.map((f) => f.passed && f.shownShare === undefined)).toEqual([false, true]);
    expect(run.facts.some((f) => f.fact === 'site.done' && f.task === 'changeDetector')).toBe(true);
  });

  it('after any slip shows an action the rig accepts: 500 states reached by chance', () => {
    let chance: Generator = seedGenerator(20517);
    const draw = (count: number): number => {
      const next = drawInteger(chance, count);
      chance = next.generator;
      return next.value;
    };
    const actions = steadyRun().entries.map((entry) => entry.action);
    const refused: string[] = [];
    let states = 0;
    while (states < 500) {
      let run = walkModel(draw(actions.length));
      for (let slips = 0; slips < 10 && run.rig.ending === null && states < 500; slips += 1) {
        run = slip(run, actions[draw(actions.length)]);
        if (run.rig.ending !== null) break;
        states += 1;
        const next = advised(run);
        if (next?.action && could(run, next.action) !== null) refused.push(`${next.why} at ${run.clockS}`);
        if (next) expect(dueReasons).toContain(next.why);
        if (next && next.action === null) expect(next.waitS).toBeGreaterThan(0);
      }
    }
    expect(refused).toEqual([]);
  });

  it('says nothing more once the run has ended', () => {
    expect(advised(steadyRun().run)).toBeNull();
  });
});

const walked = new Map<number, RunState>();
/** The model run up to an entry, in strides kept for the next asker. */
function walkModel(upTo: number): RunState {
  const stride = Math.floor(upTo / 60) * 60;
  let from = stride;
  while (from > 0 && !walked.has(from)) from -= 60;
  let run = walked.get(from) ?? begin(exercise());
  const { entries } = steadyRun();
  for (let i = from; i < stride; i += 1) {
    const attempted = attempt(advance(run, entries[i].atS), entries[i].action);
    if ('hindrance' in attempted) throw new Error(attempted.hindrance);
    run = attempted.run;
  }
  run = advance(run, run.busyUntilS);
  walked.set(stride, run);
  return run;
}

function slip(run: RunState, action: Action): RunState {
  const attempted = attempt(run, action);
  return 'hindrance' in attempted ? run : advance(attempted.run, attempted.run.busyUntilS);
}
