import { constants, type Constant } from '../core/catalogue/index.ts';
import { readSensitivity, type JobOutcomes, type Sensitivity } from '../core/physics/index.ts';
import { PSI_PA } from '../core/units/index.ts';

/** One assumed number with what each end of its range makes of the job's questions. */
export interface SensitivityLine {
  readonly name: string;
  readonly says: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly atLow: JobOutcomes;
  readonly atHigh: JobOutcomes;
}

/** What the ranges of the assumed numbers do, ready for a person or a program. */
export interface SensitivityReport {
  readonly base: JobOutcomes;
  readonly assumed: readonly SensitivityLine[];
  /** Assumed numbers that move none of these questions. */
  readonly still: readonly string[];
}

/** Both ends of every assumed number's range, the others as they are. */
export function sensitivity(): SensitivityReport {
  const { base, rows, still }: Sensitivity = readSensitivity();
  const assumed = rows.map(({ name, low: atLow, high: atHigh }) => {
    const { says, unit, value, low, high }: Constant = constants[name];
    return { name, says, unit, value, low, high, atLow, atHigh };
  });
  return { base, assumed, still };
}

const questions: readonly [keyof JobOutcomes, string, (value: number) => string][] = [
  ['firstTurns', 'first chamber shut at', (turns) => `${turns.toFixed(2)} turn`],
  ['secondTurns', 'second chamber shut at', (turns) => `${turns.toFixed(2)} turn`],
  ['proofDropPa', 'gritty proof loses', (pa) => `${(pa / PSI_PA).toFixed(2)} psi`],
  ['stopSealNm', 'stop seals at', (nm) => `${nm.toFixed(2)} N·m`],
  ['stopHoldNm', 'stop holds at', (nm) => `${nm.toFixed(2)} N·m`],
  ['peakLel', 'hole peaks at', (share) => `${(100 * share).toFixed(1)} % LEL`],
];

/** The report as lines for a person: first how things stand, then what each range makes of it. */
export function wordSensitivity({ base, assumed, still }: SensitivityReport): string {
  const stand = questions.map(([key, says, word]) => `${says} ${word(base[key])}`);
  const lines = assumed.map((line) => {
    const moved = questions
      .filter(([key]) => line.atLow[key] !== base[key] || line.atHigh[key] !== base[key])
      .map(([key, says, word]) => `${says} ${word(line.atLow[key])} … ${word(line.atHigh[key])}`);
    return `${line.name}, ${line.says}: ${line.value} ${line.unit} (${line.low} … ${line.high})\n    ${moved.join('; ')}`;
  });
  return [
    `On a main at 35 psig: ${stand.join('; ')}.`,
    'Assumed numbers at the low and the high end of their range, the others as they are:',
    ...lines,
    `These assumed numbers move none of it: ${still.join(', ')}.`,
  ].join('\n');
}
