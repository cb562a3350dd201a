import type { HoldPointId } from '../../../rig/index.ts';
import type { Act } from '../acts.ts';
import type { Expected, Undecided } from './expected.ts';

/** Acts of some keys, towards some hold points, and which of them there; and what must be true of all of them. */
export interface Line {
  readonly keys: readonly string[];
  /** Any, where it is not said. */
  readonly toward?: readonly HoldPointId[];
  /** Which of this key towards the same hold point, counted from 1; from the last, counted from 1. */
  readonly inStage?: readonly number[];
  readonly fromEnd?: readonly number[];
  readonly expected: Expected | Undecided;
}

/** The first line that fits an act, or null. */
export function firstFitting(lines: readonly Line[], act: Act): Line | null {
  return lines.find((line) => fits(line, act)) ?? null;
}

/** What a line says, or null where no rule of the trade decides. */
export function saidBy({ expected }: Line): Expected | null {
  return 'undecided' in expected ? null : expected;
}

function fits({ keys, toward, inStage, fromEnd }: Line, act: Act): boolean {
  return (
    keys.includes(act.key) &&
    (toward === undefined || (act.toward !== null && toward.includes(act.toward))) &&
    (inStage === undefined || inStage.includes(act.inStage)) &&
    (fromEnd === undefined || fromEnd.includes(act.fromEnd))
  );
}
