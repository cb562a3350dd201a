import { FOOT_M, INCH_M, POUND_FOOT_NM, POUND_FORCE_N, toPsi } from '../core/units/index.ts';
import { decimals, figureWords } from './figures.ts';

/** US customary or SI; every sentence can be had in both. */
export type UnitSystem = 'us' | 'si';

/** How quantities are written. Every function takes SI and gives the number with its unit. */
export interface Units {
  readonly system: UnitSystem;
  /** Gauge pressure, Pa. */
  readonly pressure: (gaugePa: number) => string;
  /** A change or difference of pressure, Pa. */
  readonly difference: (pa: number) => string;
  /** Wrench torque, N·m. */
  readonly torque: (nm: number) => string;
  /** Finger torque, N·m. */
  readonly fingerTorque: (nm: number) => string;
  /** Lengths of the rig and of its gaps, m. */
  readonly length: (m: number) => string;
  /** Lengths of pipe and site, m. */
  readonly distance: (m: number) => string;
  readonly mass: (kg: number) => string;
  readonly massFlow: (kgPerS: number) => string;
  readonly force: (n: number) => string;
  readonly energy: (j: number) => string;
  /** Of pipe or air, K. */
  readonly temperature: (k: number) => string;
}

/** Three figures or so: as many decimals as the size asks for. */
function figures(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return decimals(value, 0);
  if (size >= 10) return decimals(value, 1);
  return decimals(value, size >= 1 || size === 0 ? 1 : 2);
}

const POUND_INCH_NM = POUND_FOOT_NM / 12;
/** One avoirdupois ounce, kg (exact by definition of the pound). */
const OUNCE_KG = 0.028349523125;

const us: Units = {
  system: 'us',
  pressure: (gaugePa) => `${decimals(toPsi(gaugePa), 1)} psig`,
  difference: (pa) => `${figures(toPsi(pa))} psi`,
  torque: (nm) => `${decimals(nm / POUND_FOOT_NM, 0)} lbf·ft`,
  fingerTorque: (nm) => `${decimals(nm / POUND_INCH_NM, 0)} lbf·in`,
  length: (m) => `${decimals(m / INCH_M, 2)} in`,
  distance: (m) => `${decimals(m / FOOT_M, m < 30 ? 1 : 0)} ft`,
  mass: (kg) => `${figures(kg / OUNCE_KG)} oz`,
  massFlow: (kgPerS) => `${figures((kgPerS * 60) / OUNCE_KG)} oz/min`,
  force: (n) => `${decimals(n / POUND_FORCE_N, 0)} lbf`,
  energy: (j) => `${decimals(j / POUND_FOOT_NM, 0)} ft·lbf`,
  temperature: (k) => `${decimals(((k - 273.15) * 9) / 5 + 32, 0)} °F`,
};

const si: Units = {
  system: 'si',
  pressure: (gaugePa) => `${decimals(gaugePa / 1000, Math.abs(gaugePa) < 1e5 ? 1 : 0)} kPa`,
  difference: (pa) => `${figures(pa / 1000)} kPa`,
  torque: (nm) => `${decimals(nm, 0)} N·m`,
  fingerTorque: (nm) => `${decimals(nm, 1)} N·m`,
  length: (m) => `${decimals(m * 1000, Math.abs(m) < 0.02 ? 1 : 0)} mm`,
  distance: (m) => `${decimals(m, 1)} m`,
  mass: (kg) => `${figures(kg * 1000)} g`,
  massFlow: (kgPerS) => `${figures(kgPerS * 1000)} g/s`,
  force: (n) => `${decimals(n, 0)} N`,
  energy: (j) => `${decimals(j, 0)} J`,
  temperature: (k) => `${decimals(k - 273.15, 1)} °C`,
};

/** How a system of units writes its quantities. */
export function unitsOf(system: UnitSystem): Units {
  return system === 'us' ? us : si;
}

/** A share as a percentage, to the nearest whole one. */
export function percent(share: number): string {
  return `${decimals(share * 100, 0)} %`;
}

/** A share as a percentage with one decimal: oxygen, small fractions. */
export function finePercent(share: number): string {
  return `${decimals(share * 100, 1)} %`;
}

/** An angle as degrees, rad in. */
export function degrees(angleRad: number): string {
  return `${decimals((angleRad * 180) / Math.PI, 0)}°`;
}

/** A level of sound, dB. */
export function decibels(levelDb: number): string {
  return `${decimals(levelDb, 0)} dB`;
}

/** A length of time as a person says it: `45 s`, `2 min 5 s`, `1 h 4 min`. */
export function duration(durationS: number): string {
  const whole = Math.round(durationS);
  if (Math.abs(durationS) < 10) return `${decimals(durationS, whole === durationS ? 0 : 1)} s`;
  if (whole < 60) return `${whole} s`;
  if (whole < 3600) return joined(Math.floor(whole / 60), 'min', whole % 60, 's');
  return joined(Math.floor(whole / 3600), 'h', Math.floor((whole % 3600) / 60), 'min');
}

function joined(large: number, largeUnit: string, small: number, smallUnit: string): string {
  return small === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${small} ${smallUnit}`;
}

/** A moment of the run as a clock shows it: `0:00`, `12:05`, `1:04:09`. */
export function clock(atS: number): string {
  const whole = Math.floor(atS);
  const two = (n: number) => (n < 10 ? `0${n}` : String(n));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

const parts: readonly [number, string][] = [
  [1, '1/24'],
  [2, '1/12'],
  [3, '1/8'],
  [4, '1/6'],
  [6, '1/4'],
  [8, '1/3'],
  [9, '3/8'],
  [10, '5/12'],
  [12, '1/2'],
  [14, '7/12'],
  [15, '5/8'],
  [16, '2/3'],
  [18, '3/4'],
  [20, '5/6'],
  [21, '7/8'],
  [22, '11/12'],
];

/** A count of turns as a fitter says it (`1/8 turn`, `1 1/3 turns`); decimals where no plain fraction fits. Sign dropped. */
export function turnsOf(turns: number): string {
  const size = Math.abs(turns);
  const whole = Math.floor(size + 1e-9);
  const rest = size - whole;
  const { turn, turns: many, noTurn } = figureWords();
  const noun = size > 1 + 1e-9 ? many : turn;
  if (rest < 0.005) return whole === 0 ? noTurn : `${whole} ${noun}`;
  const part = parts.find(([n]) => Math.abs(n / 24 - rest) < 0.005);
  if (!part) return `${decimals(size, 2)} ${noun}`;
  return whole === 0 ? `${part[1]} ${noun}` : `${whole} ${part[1]} ${noun}`;
}

/** Pressure behind a fresh cut from which gas is said to blow, and to seep, Pa gauge. */
export const BLOWS_FROM_PA = 3000;
export const SEEPS_FROM_PA = 50;
/** From this pressure a hand notices that a piece is pushed as it comes away, Pa gauge (assumed). */
export const PUSHES_FROM_PA = 700;
/** From this thrust a plug or tee let go in the open flies up, N (assumed; its own weight is some 10 N). */
export const THROWS_FROM_N = 50;
