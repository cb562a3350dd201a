import { constants } from '../catalogue/index.ts';
import { type FlowAt, type Mixture, setStill, throttle, turnRound } from './flowAt.ts';
import type { Law } from './network.ts';
import { type CurvePair, orificeFlow } from './orificeFlow.ts';
import { pipeFlow, pipeSize } from './pipeFlow.ts';
import { slotFlow, slotSize } from './slotFlow.ts';

/** A law with its numbers laid out: writes the flow between two pressures, Pa absolute, and its slopes. */
export type LinkLaw = (fromAbsPa: number, toAbsPa: number, mixture: Mixture, out: FlowAt) => void;

/** True for the laws that only ever pass gas from `from` to `to`. */
export function isOneWay(law: Law): boolean {
  return law.law === 'relief' || law.law === 'check' || law.law === 'regulator' || law.law === 'source';
}

/** Lays a law out. Throws RangeError where a size is not a number or is negative. */
export function linkLaw(law: Law, curves: CurvePair): LinkLaw {
  for (const value of Object.values(law)) {
    if (typeof value === 'number' && !(value >= 0))
      throw new RangeError(`A ${law.law} cannot have ${value}.`);
  }
  switch (law.law) {
    case 'orifice':
      return bothWays((high, low, mixture, out) => orificeFlow(law.cdAM2, high, low, mixture, curves, out));
    case 'slot': {
      const size = slotSize(law.perimeterM, law.gapM, law.lengthM, law.cd);
      return bothWays((high, low, mixture, out) => slotFlow(size, high, low, mixture, curves, out));
    }
    case 'pipe': {
      const size = pipeSize(law.diameterM, law.lengthM, law.roughnessM, law.lossK ?? 0);
      return bothWays((high, low, mixture, out) => pipeFlow(size, high, low, mixture, out));
    }
    case 'relief':
      return lifting(law.cdAM2, law.setDropPa, law.fullDropPa, curves);
    case 'check':
      return lifting(law.cdAM2, 0, constants.checkSpringPa.value, curves);
    case 'regulator':
      return regulating(law.cdAM2, law.setAbsPa, law.bandPa, curves);
    case 'source':
      return (_from, _to, _mixture, out) => {
        setStill(out);
        out.molPerS = law.molPerS;
      };
  }
}

function bothWays(law: LinkLaw): LinkLaw {
  return (from, to, mixture, out) => {
    if (from >= to) {
      law(from, to, mixture, out);
      return;
    }
    law(to, from, mixture, out);
    turnRound(out);
  };
}

/** One way, its opening a smooth step of the drop between two drops. */
function lifting(cdAM2: number, setDropPa: number, fullDropPa: number, curves: CurvePair): LinkLaw {
  const span = Math.max(1, fullDropPa - setDropPa);
  return (from, to, mixture, out) => {
    const lift = (from - to - setDropPa) / span;
    if (!(lift > 0)) {
      setStill(out);
      return;
    }
    orificeFlow(cdAM2, from, to, mixture, curves, out);
    if (lift >= 1) return;
    const slope = (6 * lift * (1 - lift)) / span;
    throttle(out, lift * lift * (3 - 2 * lift), slope, -slope);
  };
}

/** One way, its opening a smooth step of how far the fed side has fallen below the setting. */
function regulating(cdAM2: number, setAbsPa: number, bandPa: number, curves: CurvePair): LinkLaw {
  const span = Math.max(1, bandPa);
  return (from, to, mixture, out) => {
    const call = (setAbsPa - to) / span;
    if (!(call > 0) || from <= to) {
      setStill(out);
      return;
    }
    orificeFlow(cdAM2, from, to, mixture, curves, out);
    if (call >= 1) return;
    throttle(out, call * call * (3 - 2 * call), 0, (-6 * call * (1 - call)) / span);
  };
}
