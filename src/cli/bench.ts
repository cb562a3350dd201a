import { drive, steady } from '../core/hands/index.ts';
import {
  compile,
  evenContents,
  firstStepS,
  liveRig,
  openAtRandom,
  stepTo,
  type Network,
} from '../core/physics/index.ts';
import { advance, replay, type RunState } from '../core/run/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { ATM_PA } from '../core/units/index.ts';

/** What the engine costs on this machine, in its own processor time. */
export interface BenchReport {
  readonly fullJob: { readonly ms: number; readonly simulatedS: number; readonly simPerCpuS: number };
  readonly quietHold: { readonly simPerCpuS: number };
  readonly blow: { readonly simPerCpuS: number };
  readonly actions: { readonly n: number; readonly failures: number; readonly maxSteps: number };
  readonly growth: readonly { readonly cells: number; readonly usPerStep: number }[];
  readonly length: readonly { readonly simulatedS: number; readonly ms: number }[];
}

const REPLAYS = 8;
/** Random openings tried unless told otherwise. */
export const OPENINGS = 100000;
const HOLD_S = 36000;
const BLOW_S = 120;

/** Measures the whole job, a hold, a blow, random openings, and how cost grows with cells and with time. */
export function bench(scenario: Scenario, openings: number, told: (what: string) => void): BenchReport {
  told('The whole job …');
  let proof: RunState | null = null;
  const { entries, run } = drive(scenario, steady, (now) => {
    if (proof === null && isHeldProof(now)) proof = now;
  });
  const jobMs = leastMs(REPLAYS, () => replay(scenario, entries, undefined, run.clockS));
  const length = [0, 4, 16].map((hours) => {
    const simulatedS = (entries.at(-2)?.atS ?? 0) + hours * 3600;
    const ms = leastMs(2, () => replay(scenario, entries.slice(0, -1), undefined, simulatedS));
    return { simulatedS: whole(simulatedS), ms: tenth(ms) };
  });
  told('Holds, blows and growth …');
  const quietHold = holdPerCpuS(proof ?? run);
  const blow = simPerCpuS(blowing(), ATM_PA, BLOW_S);
  const growth = [0, 4, 8, 16].map((more) => growthOf(liveRig(more)));
  told(`${openings} random openings …`);
  const { count, failures, maxSteps } = openAtRandom(openings, 1);
  return {
    fullJob: {
      ms: tenth(jobMs),
      simulatedS: whole(run.clockS),
      simPerCpuS: whole((run.clockS * 1000) / jobMs),
    },
    quietHold: { simPerCpuS: whole(quietHold) },
    blow: { simPerCpuS: whole(blow) },
    actions: { n: count, failures, maxSteps },
    growth,
    length,
  };
}

/** The first chamber pumped above the main, read, and left to stand. */
function isHeldProof({ rig, facts }: RunState): boolean {
  const last = facts.at(-1);
  const read = last?.fact === 'gauge.read' && last.gauge === 'head' ? last.readingGaugePa : 0;
  return rig.saddle.on === 'tee' && read > rig.job.system.mainPressureGaugePa;
}

/** Simulated seconds of a standing proof that one second of processor time buys. */
function holdPerCpuS(proof: RunState): number {
  const ms = leastMs(5, () => advance({ ...proof, gas: { ...proof.gas } }, proof.clockS + HOLD_S));
  return (HOLD_S * 1000) / ms;
}

/** The bench rig with its top standing open to the air. */
function blowing(): Network {
  const network = liveRig();
  network.links.push({ id: 'open', from: 'above', to: 'air', law: 'orifice', cdAM2: 2e-4 });
  network.links = network.links.map((link) => (link.law === 'slot' ? { ...link, gapM: 1e-3 } : link));
  return network;
}

/** Simulated seconds one second of processor time buys, best of some. */
function simPerCpuS(network: Network, pressureAbsPa: number, durationS: number): number {
  const net = compile(network);
  const contents = evenContents(network, pressureAbsPa, 1);
  const first = firstStepS(net, 0, contents);
  const repeats = 20;
  const ms = leastMs(5, () => {
    for (let i = 0; i < repeats; i += 1) stepTo(net, 0, contents, first, durationS);
  });
  return (durationS * repeats * 1000) / ms;
}

function growthOf(network: Network): { cells: number; usPerStep: number } {
  const net = compile(network);
  const contents = evenContents(network, ATM_PA, 0);
  const first = firstStepS(net, 0, contents);
  let steps = 0;
  const ms = leastMs(5, () => {
    steps = 0;
    for (let i = 0; i < 20; i += 1) steps += stepTo(net, 0, contents, first, 60).steps;
  });
  return { cells: network.cells.length, usPerStep: tenth((ms * 1000) / steps) };
}

/** Least processor time of so many tries, ms: what the work costs when nothing disturbs it. */
function leastMs(tries: number, work: () => void): number {
  let least = Infinity;
  for (let i = 0; i < tries; i += 1) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return Math.max(least, 0.001);
}

const whole = (value: number): number => Math.round(value);
const tenth = (value: number): number => Math.round(value * 10) / 10;

/** The report as lines for a person. */
export function wordBench(report: BenchReport): string {
  const { fullJob, quietHold, blow, actions } = report;
  return [
    `Whole job: ${fullJob.ms} ms for ${fullJob.simulatedS} s of simulated time (${fullJob.simPerCpuS} per processor second)`,
    `Quiet hold: ${quietHold.simPerCpuS} simulated seconds per processor second`,
    `Open blow: ${blow.simPerCpuS} simulated seconds per processor second`,
    `Random openings: ${actions.n}, ${actions.failures} failures, at most ${actions.maxSteps} steps`,
    ...report.growth.map(({ cells, usPerStep }) => `${cells} cells: ${usPerStep} µs a step`),
    ...report.length.map(({ simulatedS, ms }) => `${simulatedS} s simulated: ${ms} ms`),
  ].join('\n');
}
