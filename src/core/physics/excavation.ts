import { exp, GAS_CONSTANT } from '../units/index.ts';

/** The air of the hole, taken as one well-mixed box at the atmosphere's pressure. Its figure is an average, no more. */
export interface ExcavationBox {
  volumeM3: number;
  /** Mole fraction of fuel gas in the box. */
  gasFraction: number;
  /** Fresh air, m³/s, by wind and blower. */
  freshAirM3PerS: number;
  /** Share of the fresh air that really mixes, 0 to 1. */
  mixingFactor: number;
  temperatureK: number;
  pressureAbsPa: number;
}

/** What came into the box during the time, mol. */
export interface ExcavationInflow {
  airMol: number;
  gasMol: number;
}

/** The box afterwards, and the fuel gas that left it for the open air, mol. */
export interface ExcavationStep {
  box: ExcavationBox;
  gasLeftMol: number;
}

/**
 * The box after a time in which gas and air came in at a steady rate: V dC/dt = G − (G + A + K·Q)·C, solved exactly,
 * so that the answer does not depend on how the time is cut as long as the inflow is steady. Source: the usual
 * ventilated-box balance (Reclamation HVAC design guide p. 106 and NFPA 69 annex use it). durationS 0 adds the
 * inflow at once, well mixed, the box spilling what it pushes out.
 */
export function advanceExcavation(
  box: ExcavationBox,
  inflow: ExcavationInflow,
  durationS: number,
): ExcavationStep {
  const molarVolumeM3 = (GAS_CONSTANT * box.temperatureK) / box.pressureAbsPa;
  const gasM3 = inflow.gasMol * molarVolumeM3;
  const turnedOverM3 =
    gasM3 + inflow.airMol * molarVolumeM3 + box.mixingFactor * box.freshAirM3PerS * durationS;
  if (turnedOverM3 <= 0) return { box, gasLeftMol: 0 };
  const towards = gasM3 / turnedOverM3;
  const gasFraction = towards + (box.gasFraction - towards) * exp(-turnedOverM3 / box.volumeM3);
  const gasLeftM3 = gasM3 - (gasFraction - box.gasFraction) * box.volumeM3;
  return { box: { ...box, gasFraction }, gasLeftMol: gasLeftM3 / molarVolumeM3 };
}

/** Gas fraction as a share of the lower explosive limit: 1 is 100 % LEL. */
export function lelShare(gasFraction: number, lelFraction: number): number {
  return gasFraction / lelFraction;
}

/** Oxygen fraction of air that has so much fuel gas in it. */
export function oxygenFraction(gasFraction: number, airOxygenFraction: number): number {
  return (1 - gasFraction) * airOxygenFraction;
}

/** Fuel gas in the box, mol. */
export function excavationGasMol(box: ExcavationBox): number {
  return (box.gasFraction * box.volumeM3 * box.pressureAbsPa) / (GAS_CONSTANT * box.temperatureK);
}
