import { drive, steady } from '../../core/hands/index.ts';
import {
  compile,
  evenContents,
  firstStepS,
  liveRig,
  openAtRandom,
  stepTo,
  type Network,
} from '../../core/physics/index.ts';
import { advance, replay, type RunState } from '../../core/run/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';
import { ATM_PA } from '../../core/units/index.ts';
import { leastMs, tenth, whole } from './cpu.ts';
import { PATIENCE } from './explicit.ts';
import { measureActions, type ActionsReport } from './measureActions.ts';
import { measureGrowth, type Growth } from './growth.ts';
import { measureLengths, type Length } from './length.ts';
import { measureStiff, type Stiff } from './measureStiff.ts';

/** What the engine costs on this machine, in its own processor time. */
export interface BenchReport {
  readonly fullJob: { readonly ms: number; readonly simulatedS: number; readonly simPerCpuS: number };
  readonly quietHold: { readonly simPerCpuS: number };
  readonly blow: { readonly simPerCpuS: number };
  /** Random actions on the real run, and random openings of the bare solver. */
  readonly actions: ActionsReport;
  readonly openings: Omit<ActionsReport, 'tried'>;
  readonly growth: readonly Growth[];
  readonly length: readonly Length[];
  readonly rhs: readonly Stiff[];
  /** Where SciPy's figures are from. */
  readonly rhsFrom: string;
}

const REPLAYS = 20;
const SEED = 20517;
/** How much is tried. */
export interface BenchSize {
  /** Random actions. */
  readonly actions: number;
  /** Random openings. */
  readonly openings: number;
  /** Evaluations after which an explicit method gives up. */
  readonly patience: number;
}
export const BENCH_SIZE: BenchSize = { actions: 100_000, openings: 100_000, patience: PATIENCE };
const HOLD_S = 600;
const HOLDS = 60;
const BLOW_S = 120;

/**
 * Measures the whole job, a hold, a blow, random openings, how cost grows with cells and with time, and evaluations
 * beside other methods: all in one run, so that the ratios are of one machine at one time.
 */
export function bench(
  scenario: Scenario,
  { actions: acts, openings, patience }: BenchSize,
  told: (what: string) => void,
): BenchReport {
  told('The whole job …');
  let found: RunState | null = null;
  const { entries, run } = drive(scenario, steady, (now) => {
    if (found === null && isHeldProof(now)) found = now;
  });
  const jobMs = leastMs(REPLAYS, () => replay(scenario, entries, undefined, run.clockS));
  const proof = found ?? run;
  told('Holds, blows and growth …');
  const quietHold = holdPerCpuS(proof);
  const blow = blowPerCpuS(blowing());
  const growth = measureGrowth();
  told('Ten minutes to eight hours …');
  const length = measureLengths(proof);
  told(`${acts} random actions …`);
  const actions = measureActions(scenario, acts, SEED);
  told(`${openings} random openings …`);
  let opened = openAtRandom(1, 1);
  const openedMs = leastMs(1, () => {
    opened = openAtRandom(openings, 1);
  });
  told('Stiff cases beside other methods …');
  const { rhs, rhsFrom } = measureStiff(patience);
  const { count, failures, maxSteps, worstClosure } = opened;
  return {
    fullJob: {
      ms: tenth(jobMs),
      simulatedS: whole(run.clockS),
      simPerCpuS: whole((run.clockS * 1000) / jobMs),
    },
    quietHold: { simPerCpuS: whole(quietHold) },
    blow: { simPerCpuS: whole(blow) },
    actions,
    openings: { n: count, failures, maxSteps, ms: whole(openedMs), worstClosure },
    growth,
    length,
    rhs,
    rhsFrom,
  };
}

/** The first chamber pumped above the main, read, and left to stand. */
function isHeldProof({ rig, facts }: RunState): boolean {
  const last = facts.at(-1);
  const read = last?.fact === 'gauge.read' && last.gauge === 'head' ? last.readingGaugePa : 0;
  return rig.saddle.on === 'tee' && read > rig.job.system.mainPressureGaugePa;
}

/** Simulated seconds of a ten-minute standing proof that one second of processor time buys. */
function holdPerCpuS(proof: RunState): number {
  const ms = leastMs(8, () => {
    for (let i = 0; i < HOLDS; i += 1) advance({ ...proof, gas: { ...proof.gas } }, proof.clockS + HOLD_S);
  });
  return (HOLD_S * HOLDS * 1000) / ms;
}

/** The bench rig with its top standing open to the air. */
function blowing(): Network {
  const network = liveRig();
  network.links.push({ id: 'open', from: 'above', to: 'air', law: 'orifice', cdAM2: 2e-4 });
  network.links = network.links.map((link) => (link.law === 'slot' ? { ...link, gapM: 1e-3 } : link));
  return network;
}

/** Simulated seconds of a blow one second of processor time buys, best of some. */
function blowPerCpuS(network: Network): number {
  const net = compile(network);
  const contents = evenContents(network, ATM_PA, 1);
  const first = firstStepS(net, 0, contents);
  const repeats = 20;
  const ms = leastMs(5, () => {
    for (let i = 0; i < repeats; i += 1) stepTo(net, 0, contents, first, BLOW_S);
  });
  return (BLOW_S * repeats * 1000) / ms;
}

export { wordBench } from './wordBench.ts';
