import { cbrtPortable } from '../units/index.ts';
import type { CompiledNetwork } from './compile.ts';
import { loadState } from './contents.ts';
import { turnDonors } from './donors.ts';
import { stepError } from './stepError.ts';
import { chooseDonors, layFlows, layPlaces } from './evaluate.ts';
import type { Contents, Step } from './network.ts';
import { keepPositive } from './positivity.ts';
import { runStages } from './rosenbrock.ts';

/** No step is refused below this length; nothing the model knows happens faster. */
const LEAST_STEP_S = 1e-9;
/** How much a step may grow or shrink, and how much of the foreseen step is taken. */
const GROWTH = 6;
const SHRINK = 0.15;
const CAUTION = 0.85;

let stepsTaken = 0;

/** Accepted steps of the solver since the module was loaded: for measures; no law knows of it. */
export function solverSteps(): number {
  return stepsTaken;
}

/**
 * One accepted adaptive step from startS: the natural grain of the run. It depends on the network, the contents and
 * the proposed stepS alone, so that time may be cut anywhere. It is never longer than maxStepS.
 * Throws RangeError if contents are negative or not numbers, or a step is not positive.
 */
export function naturalStep(
  net: CompiledNetwork,
  startS: number,
  contents: Contents,
  stepS: number,
  maxStepS: number,
): Step {
  if (!(stepS > 0 && maxStepS > 0)) throw new RangeError('A step is longer than nothing.');
  begin(net, contents);
  const accepted = acceptStep(net, startS, Math.min(stepS, maxStepS));
  return {
    endS: startS + accepted.hS,
    contents: takeContents(net),
    linkAirMol: listOf(net.scratch.linkAirMol),
    linkGasMol: listOf(net.scratch.linkGasMol),
    nextStepS: accepted.nextStepS,
    steps: 1,
    evaluations: accepted.evaluations,
  };
}

/**
 * As many steps as are needed to land exactly on endS; link integrals are summed. A step cut short only by endS does
 * not shorten nextStepS. Throws RangeError as naturalStep does, or if endS lies before startS.
 */
export function stepTo(
  net: CompiledNetwork,
  startS: number,
  contents: Contents,
  stepS: number,
  endS: number,
): Step {
  if (!(endS >= startS)) throw new RangeError('Time runs forward.');
  if (!(stepS > 0)) throw new RangeError('A step is longer than nothing.');
  begin(net, contents);
  let atS = startS;
  let nextStepS = stepS;
  let steps = 0;
  let evaluations = 0;
  while (atS < endS) {
    const left = endS - atS;
    const wanted = nextStepS;
    const accepted = acceptStep(net, atS, Math.min(wanted, left));
    const whole = accepted.hS >= left;
    atS = whole ? endS : atS + accepted.hS;
    nextStepS = whole && wanted > left ? Math.max(wanted, accepted.nextStepS) : accepted.nextStepS;
    steps += 1;
    evaluations += accepted.evaluations;
  }
  return {
    endS,
    contents: takeContents(net),
    linkAirMol: listOf(net.scratch.linkAirMol),
    linkGasMol: listOf(net.scratch.linkGasMol),
    nextStepS,
    steps,
    evaluations,
  };
}

/** A careful first step, s, after something was done: a hundredth of the time in which the fastest cell would turn over. */
export function firstStepS(net: CompiledNetwork, startS: number, contents: Contents): number {
  loadState(net, contents);
  layPlaces(net, net.scratch.state, startS);
  chooseDonors(net);
  layFlows(net, false);
  const { flows, totalMol } = net.scratch;
  let fastest = 0;
  for (let l = 0; l < net.linkCount; l += 1) {
    const flow = Math.abs(flows.air[l] + flows.gas[l]);
    for (const node of [net.from[l], net.to[l]]) {
      if (node < net.cellCount) fastest = Math.max(fastest, flow / totalMol[node]);
    }
  }
  return Math.max(1e-6, Math.min(0.1, 0.01 / fastest));
}

/** Contents loaded, and nothing passed through any link yet. */
function begin(net: CompiledNetwork, contents: Contents): void {
  loadState(net, contents);
  net.scratch.linkAirMol.fill(0);
  net.scratch.linkGasMol.fill(0);
}

/** A list of plain numbers, grown one by one: it is then kept as numbers, not as objects. */
function listOf(values: Float64Array): number[] {
  const list: number[] = [];
  for (let i = 0; i < values.length; i += 1) list.push(values[i]);
  return list;
}

/** Tries steps until one is good, adds its link integrals and moves the loaded state on. */
function acceptStep(
  net: CompiledNetwork,
  startS: number,
  firstS: number,
): { hS: number; nextStepS: number; evaluations: number } {
  let hS = firstS;
  let refused = false;
  let turned = false;
  let evaluations = 1;
  startOver(net, startS);
  for (;;) {
    const forced = hS <= LEAST_STEP_S;
    evaluations += 2;
    const error = runStages(net, startS, hS) ? stepError(net) : Infinity;
    if (error <= 1 || forced) {
      if (!forced && turnDonors(net)) {
        // Once the other donor is tried at the same length; should that turn too, the flow really goes both ways.
        if (turned) {
          hS *= 0.5;
          startOver(net, startS);
        } else {
          layPlaces(net, net.scratch.state, startS);
          layFlows(net, true);
        }
        turned = !turned;
        refused = true;
        evaluations += 1;
        continue;
      }
      if (keepPositive(net, forced)) {
        const grown = error > 0 ? CAUTION / cbrtPortable(error) : GROWTH;
        stepsTaken += 1;
        const nextStepS = hS * Math.max(SHRINK, Math.min(refused ? 1 : GROWTH, grown));
        return { hS, nextStepS, evaluations };
      }
      hS = Math.max(LEAST_STEP_S, hS * 0.4);
    } else {
      const shrunk = error < Infinity ? CAUTION / cbrtPortable(error) : SHRINK;
      hS = Math.max(LEAST_STEP_S, hS * Math.max(SHRINK, shrunk));
    }
    refused = true;
    turned = false;
    evaluations += 1;
    startOver(net, startS);
  }
}

/** Places, donors, flows and slopes at the loaded state. */
function startOver(net: CompiledNetwork, startS: number): void {
  layPlaces(net, net.scratch.state, startS);
  chooseDonors(net);
  layFlows(net, true);
}

function takeContents(net: CompiledNetwork): Contents {
  const { state } = net.scratch;
  const airMol: number[] = [];
  const gasMol: number[] = [];
  for (let i = 0; i < net.cellCount; i += 1) {
    airMol.push(state[2 * i]);
    gasMol.push(state[2 * i + 1]);
  }
  return { airMol, gasMol };
}
