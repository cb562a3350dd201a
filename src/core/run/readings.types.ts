/** What a crew can see, hear and read at this moment. Never the truth behind it. */
export interface Readings {
  readonly atS: number;
  readonly mainGaugePa: number;
  readonly secondGaugePa: number;
  /** Test-head gauge, Pa gauge; null while no test head is on the rig. */
  readonly headGaugePa: number | null;
  /** Detector in the hole: share of the lower explosive limit as displayed. */
  readonly lelShare: number;
  readonly overRange: boolean;
  readonly alarm: 0 | 1 | 2;
  readonly oxygenShare: number;
  /** Sound of the bleed, vent and of gas in the hole at the ear, dB, and whether it stands out of the street. */
  readonly bleedDb: number;
  readonly bleedHeard: boolean;
  readonly holeDb: number;
  readonly holeHeard: boolean;
  /** Push felt on the rod by the hand, N, positive upward; null when no barrel is on. */
  readonly rodFeltN: number | null;
  /** Rod is moving by itself. */
  readonly rodTravelM: number;
}
