import { cos, sin } from '../units/index.ts';

/** Strips the port is cut into; doubling them moves the area by less than 1e-6 of the bore's. */
const STRIPS = 48;

/**
 * Free area of a quarter-turn ball valve turned by an angle from fully open, m², from its geometry: the round port
 * in the ball, seen along the pipe, is an ellipse that slides off the round seat. It is shut from the angle at which
 * the port has left the seat, 2·asin(bore/ball), a little before the quarter turn. Angles outside 0 to a quarter turn
 * count as the nearer end.
 */
export function ballValveAreaM2(boreDiameterM: number, ballDiameterM: number, turnedRad: number): number {
  const { bore, ball, turned } = kept;
  if (bore === boreDiameterM && ball === ballDiameterM && turned === turnedRad) return kept.areaM2;
  const areaM2 = portOverSeatM2(boreDiameterM, ballDiameterM, turnedRad);
  kept = { bore: boreDiameterM, ball: ballDiameterM, turned: turnedRad, areaM2 };
  return areaM2;
}

/** The last answer: a ball is asked for many times between two turns of its handle. */
let kept = { bore: NaN, ball: NaN, turned: NaN, areaM2: NaN };

function portOverSeatM2(boreDiameterM: number, ballDiameterM: number, turnedRad: number): number {
  const bore = boreDiameterM / 2;
  const turned = Math.max(0, Math.min(Math.PI / 2, turnedRad));
  const squeeze = cos(turned);
  const shift = Math.sqrt((ballDiameterM * ballDiameterM) / 4 - bore * bore) * sin(turned);
  let area = 0;
  for (let i = 0; i < STRIPS; i += 1) {
    const across = ((i + 0.5) / STRIPS) * (Math.PI / 2);
    const halfChord = bore * cos(across);
    const overlap = Math.min(halfChord, shift + halfChord * squeeze) - (shift - halfChord * squeeze);
    area += 2 * Math.max(0, Math.min(overlap, 2 * halfChord * squeeze)) * halfChord;
  }
  return (area * (Math.PI / 2)) / STRIPS;
}

/** The same as a share of the bore: 1 fully open, 0 shut. */
export function ballValveOpening(boreDiameterM: number, ballDiameterM: number, turnedRad: number): number {
  const whole = (Math.PI * boreDiameterM * boreDiameterM) / 4;
  return Math.min(1, ballValveAreaM2(boreDiameterM, ballDiameterM, turnedRad) / whole);
}
