/** What the rig may ask of the gas at this moment: pressures by cell and flows by link, and the time. */
export interface Sense {
  readonly atS: number;
  readonly seed: number;
  /** Pressure of a cell, Pa gauge; 0 where there is no such cell. */
  readonly gaugePa: (cell: string) => number;
  /** Share of fuel gas in a cell, 0 to 1. */
  readonly gasFraction: (cell: string) => number;
  /** Moles in a cell of both gases. */
  readonly mol: (cell: string) => number;
  /** Gas of both kinds through the links whose id begins so, mol/s, either way. */
  readonly flowMolPerS: (linkPrefix: string) => number;
  /** Sound at the ear, dB: of the bleed or vent, and of gas blowing into the hole. */
  readonly bleedDb: number;
  readonly holeDb: number;
  readonly streetDb: number;
  /** Detector's reading and the truth, share of the lower explosive limit. */
  readonly lelShare: number;
  /** The detector has latched over its range: it shows no figure until it is reset in clean air. */
  readonly overRange: boolean;
  readonly trueLelShare: number;
  readonly oxygenShare: number;
}

/** Nothing under pressure anywhere: for a rig before its gas is known. */
export const stillAir: Sense = {
  atS: 0,
  seed: 0,
  gaugePa: () => 0,
  gasFraction: () => 0,
  mol: () => 0,
  flowMolPerS: () => 0,
  bleedDb: -40,
  holeDb: -40,
  streetDb: 45,
  lelShare: 0,
  overRange: false,
  trueLelShare: 0,
  oxygenShare: 0.209,
};
