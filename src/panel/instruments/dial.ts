import { PSI_PA } from '../../core/units/index.ts';

/** Where the pointer of a round gauge stands and what is printed on its face. Angles in degrees, 0 straight up. */
export interface Face {
  readonly unit: string;
  /** Full scale, Pa gauge. */
  readonly fullPa: number;
  readonly ticks: readonly { readonly angle: number; readonly long: boolean }[];
  readonly numerals: readonly { readonly angle: number; readonly text: string }[];
}

const sweep = 270;
const from = -sweep / 2;

function face(
  unit: string,
  fullFigure: number,
  figurePa: number,
  tick: number,
  long: number,
  numeral: number,
): Face {
  const steps = (step: number): number[] => Array.from({ length: fullFigure / step + 1 }, (_, i) => i * step);
  const angle = (figure: number): number => from + (sweep * figure) / fullFigure;
  return {
    unit,
    fullPa: fullFigure * figurePa,
    ticks: steps(tick).map((figure) => ({ angle: angle(figure), long: figure % long === 0 })),
    numerals: steps(numeral).map((figure) => ({ angle: angle(figure), text: String(figure) })),
  };
}

/** A 100 psi gauge of 1 psi divisions, and the same range in kPa for those who read SI. */
export const faces = {
  us: face('psi', 100, PSI_PA, 1, 5, 20),
  si: face('kPa', 700, 1000, 10, 50, 100),
} as const;

/** The pointer's angle for a reading; it rests on its pin a little below zero and stops a little past full scale. */
export function pointerAngle(gaugePa: number, shown: Face): number {
  const share = gaugePa / shown.fullPa;
  return from + sweep * Math.max(-0.015, Math.min(1.02, share));
}
