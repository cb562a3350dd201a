import fc from 'fast-check';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import {
  advance,
  attempt,
  could,
  read,
  trueFlows,
  truePressures,
  type RunState,
} from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { anyAstray, goAstray, soundJob, type Astray } from './moves.ts';

const job = soundJob(exercise());
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** The run right after the last act of a way astray, its consequence still to come. */
function justActed(astray: Astray): RunState {
  let acted = job.moments[0];
  goAstray(job, astray, ({ action, hindrance, before }) => {
    if (action === null || hindrance !== null) return;
    const attempted = attempt(before, action);
    if (!('hindrance' in attempted)) acted = attempted.run;
  });
  return acted;
}

/** Holds the property for so many ways and prints the seed that breaks it. */
function holds<T>(
  arbitrary: fc.Arbitrary<T>,
  seed: number,
  numRuns: number,
  same: (drawn: T) => boolean,
): void {
  const told = fc.check(fc.property(arbitrary, same), { seed, numRuns, endOnFailure: true });
  const says = told.failed
    ? `seed ${seed}, path ${told.counterexamplePath}: ${String(told.errorInstance)}`
    : '';
  expect(says).toBe('');
}

describe('time that passes', () => {
  it('may be cut anywhere: not one bit of the run is another', () => {
    const cut = fc.record({
      astray: anyAstray(25),
      laterS: fc.double({ min: 0.001, max: 400, noNaN: true }),
      at: fc.array(share, { minLength: 1, maxLength: 6 }),
    });
    holds(cut, 41017, 150, ({ astray, laterS, at }) => {
      const run = justActed(astray);
      const endS = run.clockS + laterS;
      let inPieces = run;
      for (const part of [...at].sort((a, b) => a - b))
        inPieces = advance(inPieces, run.clockS + part * laterS);
      return isDeepStrictEqual(advance(inPieces, endS), advance(run, endS));
    });
  }, 300_000);

  it('does not go backwards, and a moment that is past changes nothing', () => {
    holds(fc.record({ astray: anyAstray(10), back: share }), 41018, 20, ({ astray, back }) => {
      const run = justActed(astray);
      return advance(run, back * run.clockS) === run && advance(run, run.clockS) === run;
    });
  }, 120_000);
});

describe('looking', () => {
  it('changes nothing, now or later: gauges read, flows seen, hands asked what they could do', () => {
    const look = fc.record({
      astray: anyAstray(25),
      laterS: fc.double({ min: 0.001, max: 200, noNaN: true }),
      at: share,
    });
    holds(look, 41019, 60, ({ astray, laterS, at }) => {
      const run = justActed(astray);
      const [middleS, endS] = [run.clockS + at * laterS, run.clockS + laterS];
      const unseen = advance(advance(run, middleS), endS);
      const middle = advance(run, middleS);
      const before = structuredClone(middle);
      read(middle);
      truePressures(middle);
      trueFlows(middle);
      for (const { action } of job.entries.filter((_, i) => i % 40 === 0)) could(middle, action);
      return isDeepStrictEqual(before, middle) && isDeepStrictEqual(advance(middle, endS), unseen);
    });
  }, 300_000);

  it('twice gives the same reading twice', () => {
    holds(anyAstray(25), 41020, 30, (astray) => {
      const run = justActed(astray);
      return isDeepStrictEqual(read(run), read(run));
    });
  }, 120_000);
});
