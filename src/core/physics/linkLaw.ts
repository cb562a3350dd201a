import { constants } from '../catalogue/index.ts';
import { type FlowAt, type Mixture, setStill, throttle, turnRound } from './flowAt.ts';
import type { Law } from './network.ts';
import { type CurvePair, orificeFlow } from './orificeFlow.ts';
import { pipeFlow, type PipeSize, pipeSize } from './pipeFlow.ts';
import { slotFlow, type SlotSize, slotSize } from './slotFlow.ts';

/**
 * A law with its numbers laid out. All of one shape, and one function for all of them: they are asked millions of
 * times, and a call that may lead anywhere costs as much as the law.
 */
export interface LinkLaw {
  readonly law: Law['law'];
  readonly cdAM2: number;
  /** Relief and check: drop at which it begins to lift, Pa. Regulator: pressure it is set to, Pa absolute. */
  readonly setPa: number;
  /** From there to full open, Pa. */
  readonly spanPa: number;
  readonly molPerS: number;
  readonly slot: SlotSize;
  readonly pipe: PipeSize;
}

const NO_SLOT: SlotSize = { cubeM3: 0, cdAM2: 0 };
const NO_PIPE: PipeSize = pipeSize(1, 1, 1e-5, 0);

/** True for the laws that only ever pass gas from `from` to `to`. */
export function isOneWay(law: Law): boolean {
  return law.law === 'relief' || law.law === 'check' || law.law === 'regulator' || law.law === 'source';
}

/** Lays a law out. Throws RangeError where a size is not a number or is negative. */
export function linkLaw(law: Law): LinkLaw {
  const shape = (cdAM2: number, setPa = 0, spanPa = 0): LinkLaw => ({
    law: law.law,
    cdAM2: size(law, cdAM2),
    setPa: size(law, setPa),
    spanPa: Math.max(1, spanPa),
    molPerS: law.law === 'source' ? size(law, law.molPerS) : 0,
    slot:
      law.law === 'slot'
        ? slotSize(size(law, law.perimeterM), size(law, law.gapM), size(law, law.lengthM), size(law, law.cd))
        : NO_SLOT,
    pipe:
      law.law === 'pipe'
        ? pipeSize(
            size(law, law.diameterM),
            size(law, law.lengthM),
            size(law, law.roughnessM),
            size(law, law.lossK ?? 0),
          )
        : NO_PIPE,
  });
  switch (law.law) {
    case 'orifice':
      return shape(law.cdAM2);
    case 'relief':
      return shape(law.cdAM2, law.setDropPa, size(law, law.fullDropPa) - law.setDropPa);
    case 'check':
      return shape(law.cdAM2, 0, constants.checkSpringPa.value);
    case 'regulator':
      return shape(law.cdAM2, law.setAbsPa, size(law, law.bandPa));
    case 'slot':
    case 'pipe':
    case 'source':
      return shape(0);
  }
}

function size(law: Law, value: number): number {
  if (!(value >= 0)) throw new RangeError(`A ${law.law} cannot have ${value}.`);
  return value;
}

/** Lays the flow between two places of a list of pressures, Pa absolute, into `out`, with its slopes if they are asked for. */
export function flowThrough(
  law: LinkLaw,
  absPa: Float64Array,
  from: number,
  to: number,
  mixture: Mixture,
  curves: CurvePair,
  slopes: boolean,
  out: FlowAt,
): void {
  const onwards = absPa[from] >= absPa[to];
  const high = onwards ? from : to;
  const low = onwards ? to : from;
  switch (law.law) {
    case 'orifice':
      orificeFlow(law, absPa, high, low, mixture, curves, slopes, out);
      break;
    case 'slot':
      slotFlow(law.slot, absPa, high, low, mixture, curves, slopes, out);
      break;
    case 'pipe':
      pipeFlow(law.pipe, absPa, high, low, mixture, out);
      break;
    case 'relief':
    case 'check':
      lifting(law, absPa, from, to, mixture, curves, out);
      return;
    case 'regulator':
      regulating(law, absPa, from, to, mixture, curves, out);
      return;
    case 'source':
      setStill(out);
      out.molPerS = law.molPerS;
      return;
  }
  if (!onwards) turnRound(out);
}

/** Share of a relief's opening at a pressure drop: a smooth step between the drop it lifts at and the one it is full at. */
export function liftShare(dropPa: number, setDropPa: number, fullDropPa: number): number {
  return smoothStep(Math.max(0, Math.min(1, (dropPa - setDropPa) / (fullDropPa - setDropPa))));
}

function smoothStep(share: number): number {
  return share * share * (3 - 2 * share);
}

/** One way, its opening a smooth step of the drop between two drops. */
function lifting(
  law: LinkLaw,
  absPa: Float64Array,
  from: number,
  to: number,
  mixture: Mixture,
  curves: CurvePair,
  out: FlowAt,
): void {
  const lift = (absPa[from] - absPa[to] - law.setPa) / law.spanPa;
  if (!(lift > 0)) {
    setStill(out);
    return;
  }
  orificeFlow(law, absPa, from, to, mixture, curves, true, out);
  if (lift >= 1) return;
  const slope = (6 * lift * (1 - lift)) / law.spanPa;
  throttle(out, smoothStep(lift), slope, -slope);
}

/** One way, its opening a smooth step of how far the fed side has fallen below the setting. */
function regulating(
  law: LinkLaw,
  absPa: Float64Array,
  from: number,
  to: number,
  mixture: Mixture,
  curves: CurvePair,
  out: FlowAt,
): void {
  const call = (law.setPa - absPa[to]) / law.spanPa;
  if (!(call > 0) || absPa[from] <= absPa[to]) {
    setStill(out);
    return;
  }
  orificeFlow(law, absPa, from, to, mixture, curves, true, out);
  if (call >= 1) return;
  throttle(out, call * call * (3 - 2 * call), 0, (-6 * call * (1 - call)) / law.spanPa);
}
