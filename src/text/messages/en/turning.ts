import { turnsOf } from '../../units.ts';

/** How far and which way, seen from above: `1/8 turn clockwise`. */
export const wayOf = (turns: number, on: string, back: string): string =>
  `${turnsOf(turns)} ${turns < 0 ? back : on}`;
export const clockwise = (turns: number): string => wayOf(turns, 'clockwise', 'counter-clockwise');
export const withHold = (holdBack: boolean): string =>
  holdBack ? ', holding back' : ', without holding back';
