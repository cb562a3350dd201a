import { turnsOf } from '../../units.ts';

/** How far and which way, seen from above: `1/8 vuelta en sentido horario`. */
export const clockwise = (turns: number): string =>
  `${turnsOf(turns)} en sentido ${turns < 0 ? 'antihorario' : 'horario'}`;
export const withHold = (holdBack: boolean): string => (holdBack ? ', con contrallave' : ', sin contrallave');
export const tighter = (turns: number): string =>
  `${turnsOf(turns)} ${turns < 0 ? 'aflojando' : 'apretando'}`;
export const chainNo = (chain: number): string => `cadena n.º ${chain + 1}`;
export const sideOf = (side: 'left' | 'right'): string => (side === 'left' ? 'izquierdo' : 'derecho');
