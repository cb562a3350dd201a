import { CUBIC_FOOT_M3, FOOT_M, INCH_M, POUND_FOOT_NM, PSI_PA } from '../../core/units/index.ts';
import type { SeverityUnit } from '../../core/faults/index.ts';
import type { UnitSystem } from '../../text/index.ts';

/** Kinds of figures that stand in an exercise, each written in one unit a system. */
export type Quantity =
  | 'gauge' | 'difference' | 'torque' | 'fingerTorque' | 'length' | 'distance' | 'volume' | 'airFlow'
  | 'temperature' | 'kelvins' | 'seconds' | 'minutes' | 'share' | 'opening' | 'turns' | 'angle' | 'points' | 'volts'
  | 'litres' | 'gasFlow' | 'plain'; // prettier-ignore

/** How a figure is shown and read. */
export interface Scale {
  /** Sign of the unit; empty for a bare number. The same in every language. */
  readonly unit: string;
  readonly shown: (si: number) => number;
  readonly si: (shown: number) => number;
  readonly decimals: number;
}

const by = (unit: string, siOfOne: number, decimals: number): Scale => ({
  unit,
  shown: (si) => si / siOfOne,
  si: (shown) => shown * siOfOne,
  decimals,
});

/** An effective opening as the round hole that passes as much: its diameter. */
const roundHole = (unit: string, metres: number, decimals: number): Scale => ({
  unit,
  shown: (cdAM2) => Math.sqrt((4 * cdAM2) / Math.PI) / metres,
  si: (diameter) => (Math.PI * (diameter * metres) ** 2) / 4,
  decimals,
});

const alike: Partial<Record<Quantity, Scale>> = {
  kelvins: by('K', 1, 2),
  seconds: by('s', 1, 1),
  minutes: by('min', 60, 1),
  share: by('%', 0.01, 1),
  turns: by('×360°', 1, 4),
  angle: by('°', Math.PI / 180, 1),
  points: by('', 1, 1),
  volts: by('V', 1, 1),
  plain: by('', 1, 3),
};

const us: Record<Quantity, Scale> = {
  ...(alike as Record<Quantity, Scale>),
  gauge: by('psig', PSI_PA, 1),
  difference: by('psi', PSI_PA, 2),
  torque: by('lbf·ft', POUND_FOOT_NM, 1),
  fingerTorque: by('lbf·in', POUND_FOOT_NM / 12, 1),
  length: by('in', INCH_M, 3),
  distance: by('ft', FOOT_M, 1),
  volume: by('ft³', CUBIC_FOOT_M3, 2),
  litres: by('ft³', CUBIC_FOOT_M3, 4),
  airFlow: by('ft³/min', CUBIC_FOOT_M3 / 60, 1),
  gasFlow: by('mol/s', 1, 4),
  temperature: { unit: '°F', shown: (k) => ((k - 273.15) * 9) / 5 + 32, si: (f) => ((f - 32) * 5) / 9 + 273.15, decimals: 1 },
  opening: roundHole('in Ø', INCH_M, 4),
}; // prettier-ignore

const si: Record<Quantity, Scale> = {
  ...(alike as Record<Quantity, Scale>),
  gauge: by('kPa', 1000, 1),
  difference: by('kPa', 1000, 2),
  torque: by('N·m', 1, 1),
  fingerTorque: by('N·m', 1, 2),
  length: by('mm', 0.001, 2),
  distance: by('m', 1, 2),
  volume: by('m³', 1, 2),
  litres: by('L', 0.001, 2),
  airFlow: by('m³/min', 1 / 60, 2),
  gasFlow: by('mol/s', 1, 4),
  temperature: { unit: '°C', shown: (k) => k - 273.15, si: (c) => c + 273.15, decimals: 1 },
  opening: roundHole('mm Ø', 0.001, 3),
};

/** How a quantity is written in a system of units. */
export function scaleOf(quantity: Quantity, system: UnitSystem): Scale {
  return system === 'us' ? us[quantity] : si[quantity];
}

/** The quantity that a fault's severity is counted in. */
export const quantityOfSeverity: Readonly<Record<SeverityUnit, Quantity>> = {
  m2: 'opening',
  m: 'length',
  m3: 'litres',
  Nm: 'torque',
  Pa: 'gauge',
  K: 'kelvins',
  V: 'volts',
  share: 'share',
  turns: 'turns',
  molPerS: 'gasFlow',
};

/** A figure as it is typed and shown in a field: no unit, no zeros at its end. */
export function figureText(shown: number, decimals: number, comma: boolean): string {
  const text = shown.toFixed(decimals).replace(/\.?0+$/, '');
  const plain = text === '-0' || text === '' ? '0' : text;
  return comma ? plain.replace('.', ',') : plain;
}

/** The number a person typed, with point or comma; null where it is none. */
export function figureTyped(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  return /^-?(\d+(\.\d*)?|\.\d+)(e-?\d+)?$/i.test(plain) ? Number(plain) : null;
}
