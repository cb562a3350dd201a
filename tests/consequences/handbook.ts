/*
 * Closed formulas from handbooks, written out here with the platform's own pow, so that the model is held against
 * arithmetic it does not share. Openings are named by their dimensions; nothing here reads the catalogue.
 */

/** The gas of the sizing tables: ratio 0.60 to air (IFGC/NFPA 54), k 1.30 (API 520-1 and gas handbooks), at 60 °F. */
const M_KG_PER_KMOL = 17.37882;
const K = 1.3;
const T_K = 288.7056;
const R = 8.314463;
export const ATM_PA = 101325;
export const PSI_PA = 6894.757;

export const absPa = (psig: number): number => psig * PSI_PA + ATM_PA;
export const circleM2 = (diameterM: number): number => (Math.PI / 4) * diameterM ** 2;
export const MM2 = 1e-6;

/** Discharge of a sharp-edged opening (handbook rule, 0.61 in some printings, 0.65 in others). */
const SHARP_EDGED = 0.61;
/** Effective openings of the rig by their dimensions, m². Bore: ASME B36.10M, NPS 1. Thread: 0.9 of B1.20.1's E1. */
export const openings = {
  lowerBore: SHARP_EDGED * circleM2(1.049 * 0.0254),
  topThread: SHARP_EDGED * circleM2(0.9 * 1.23863 * 0.0254),
  rigBore: SHARP_EDGED * circleM2(0.0762),
  pilot: SHARP_EDGED * circleM2(0.003),
  /** Bleed cock, 3 mm, discharge 0.70 (assumed). */
  bleed: 0.7 * circleM2(0.003),
} as const;

/** Critical pressure ratio, API 520-1: (2/(k+1))^(k/(k−1)). */
export const CRITICAL_RATIO = (2 / (K + 1)) ** (K / (K - 1));

/**
 * Critical flow, API 520-1, SI form: W = A·C·Kd·P1·√(M/(T·Z)), W in kg/h, A in mm², P1 in kPa,
 * C = 0.03948·√(k·(2/(k+1))^((k+1)/(k−1))). The opening is effective (Kd·A); answer in kg/s.
 */
export function chokedKgPerS(cdAM2: number, upstreamAbsPa: number): number {
  const c = 0.03948 * Math.sqrt(K * (2 / (K + 1)) ** ((K + 1) / (K - 1)));
  return ((cdAM2 / MM2) * c * (upstreamAbsPa / 1000) * Math.sqrt(M_KG_PER_KMOL / T_K)) / 3600;
}

/**
 * Subcritical flow, API 520-1: W = A·F2·Kd·√(M·P1·(P1 − P2)/(Z·T))/17.9 (17.9 *from memory*), W in kg/h, A in mm²,
 * pressures in kPa, F2 = √(k/(k−1)·r^(2/k)·(1 − r^((k−1)/k))/(1 − r)). Answer in kg/s.
 */
export function subcriticalKgPerS(cdAM2: number, upstreamAbsPa: number, downstreamAbsPa: number): number {
  const r = downstreamAbsPa / upstreamAbsPa;
  const f2 = Math.sqrt(((K / (K - 1)) * r ** (2 / K) * (1 - r ** ((K - 1) / K))) / (1 - r));
  const dropKPa = (upstreamAbsPa - downstreamAbsPa) / 1000;
  const root = Math.sqrt((M_KG_PER_KMOL * (upstreamAbsPa / 1000) * dropKPa) / T_K);
  return ((cdAM2 / MM2) * f2 * root) / 17.9 / 3600;
}

/** One opening by whichever of the two holds, kg/s. */
export function apiKgPerS(cdAM2: number, upstreamAbsPa: number, downstreamAbsPa = ATM_PA): number {
  return downstreamAbsPa <= CRITICAL_RATIO * upstreamAbsPa
    ? chokedKgPerS(cdAM2, upstreamAbsPa)
    : subcriticalKgPerS(cdAM2, upstreamAbsPa, downstreamAbsPa);
}

/** Openings one behind the other with room between them, kg/s: the flow that each of them passes. */
export function inSeriesKgPerS(cdAsM2: readonly number[], upstreamAbsPa: number, endAbsPa = ATM_PA): number {
  let [low, high] = [0, chokedKgPerS(Math.min(...cdAsM2), upstreamAbsPa)];
  for (let i = 0; i < 80; i += 1) {
    const flow = (low + high) / 2;
    if (passes(cdAsM2, upstreamAbsPa, endAbsPa, flow)) low = flow;
    else high = flow;
  }
  return low;
}

/** Whether the drop is enough for so much to pass all of them. */
function passes(cdAsM2: readonly number[], upstreamAbsPa: number, endAbsPa: number, flow: number): boolean {
  let behind = upstreamAbsPa;
  for (const [i, cdAM2] of cdAsM2.entries()) {
    if (i === cdAsM2.length - 1) return apiKgPerS(cdAM2, behind, Math.min(endAbsPa, behind)) >= flow;
    if (chokedKgPerS(cdAM2, behind) <= flow) return false;
    let [low, high] = [CRITICAL_RATIO * behind, behind];
    for (let j = 0; j < 80; j += 1) {
      const between = (low + high) / 2;
      if (subcriticalKgPerS(cdAM2, behind, between) > flow) low = between;
      else high = between;
    }
    behind = low;
    if (behind < endAbsPa) return false;
  }
  return true;
}

/** Gas in a volume at a pressure, kg: p·V·M/(R·T). */
export function gasKg(volumeM3: number, pressurePa: number): number {
  return (pressurePa * volumeM3 * M_KG_PER_KMOL) / 1000 / (R * T_K);
}

/** Volume a mass of gas takes in the open, m³. */
export const openAirM3 = (massKg: number): number => massKg / gasKg(1, ATM_PA);

/** How fast a shut volume rises by what comes in, Pa/s. */
export const risePaPerS = (kgPerS: number, volumeM3: number): number => kgPerS / gasKg(volumeM3, 1);

/**
 * Laminar flow between parallel plates (Poiseuille; any handbook), isothermal gas:
 * w·h³·(p1² − p2²)/(24·μ·l·R·T) in mol/s. μ 1.2e-5 Pa·s is the sizing tables' own. Answer in kg/s.
 */
export function slotKgPerS(
  slot: { perimeterM: number; gapM: number; lengthM: number },
  upstreamAbsPa: number,
  downstreamAbsPa: number,
): number {
  const squares = upstreamAbsPa ** 2 - downstreamAbsPa ** 2;
  const cube = (slot.perimeterM * slot.gapM ** 3) / (24 * 1.2e-5 * slot.lengthM * R * T_K);
  return (cube * squares * M_KG_PER_KMOL) / 1000;
}

/** A ventilated box with a steady inflow of gas, mole fraction after t: V·dC/dt = G − (G + Q)·C, from clean air. */
export function boxFraction(gasM3PerS: number, freshM3PerS: number, boxM3: number, atS: number): number {
  const through = gasM3PerS + freshM3PerS;
  return (gasM3PerS / through) * (1 - Math.exp((-through * atS) / boxM3));
}

/** A first-order sensor in that box, same units: convolution of the box's rise with exp(−t/τ)/τ. */
export function sensedFraction(
  gasM3PerS: number,
  freshM3PerS: number,
  boxM3: number,
  atS: number,
  lagS: number,
): number {
  const through = gasM3PerS + freshM3PerS;
  const [a, b] = [through / boxM3, 1 / lagS];
  const rise = (b * Math.exp(-a * atS) - a * Math.exp(-b * atS)) / (b - a);
  return (gasM3PerS / through) * (1 - rise);
}

/** Smallest time at which something that only rises reaches a mark, s. */
export function timeToReach(rising: (atS: number) => number, mark: number, mostS = 3600): number {
  let [low, high] = [0, mostS];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < mark) low = middle;
    else high = middle;
  }
  return high;
}
