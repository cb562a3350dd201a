import { advance, attempt, type RunState } from '../../core/run/index.ts';
import type { Action } from '../../core/rig/index.ts';
import { leastMs, tenth } from './cpu.ts';

/** What a run of some length costs. */
export interface Length {
  readonly simulatedS: number;
  readonly ms: number;
}

/** Ten minutes, one hour, four and eight. */
const LENGTHS_S = [600, 3600, 14400, 28800];
/** One act every so often, s: a crew that never stops proving its chamber. */
const EVERY_S = 30;
/** What it lets out by the vent it pumps in again, so that no hour is quieter than another. */
const ROUND: readonly Action[] = [
  { kind: 'gauge.read', gauge: 'head' },
  { kind: 'vent.turn', open: 0.02 },
  { kind: 'vent.turn', open: -0.02 },
  { kind: 'pump.stroke', strokes: 6 },
  { kind: 'valve.turn', angleRad: -1.6 },
  { kind: 'detector.read', where: 'hole' },
  { kind: 'valve.turn', angleRad: 1.6 },
  { kind: 'leakFluid.apply', at: 'seat', watchS: 10 },
];

/** Processor time by length of run, from a proof on; short ones are run often, so that each is measured as long. */
export function measureLengths(proof: RunState): Length[] {
  const longest = LENGTHS_S[LENGTHS_S.length - 1];
  return LENGTHS_S.map((simulatedS) => {
    const repeats = Math.round(longest / simulatedS);
    const ms = leastMs(4, () => {
      for (let i = 0; i < repeats; i += 1) busyRun(proof, simulatedS);
    });
    return { simulatedS, ms: tenth(ms / repeats) };
  });
}

function busyRun(proof: RunState, durationS: number): RunState {
  let run = advance(proof, proof.busyUntilS);
  const startS = run.clockS;
  for (let i = 0; run.clockS + EVERY_S <= startS + durationS; i += 1) {
    const attempted = attempt(run, ROUND[i % ROUND.length]);
    run = 'hindrance' in attempted ? run : attempted.run;
    run = advance(run, startS + (i + 1) * EVERY_S);
  }
  return advance(run, startS + durationS);
}
