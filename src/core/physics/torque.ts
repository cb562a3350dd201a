/** Torque that gives a thread a pull, N·m: T = K·F·d (bolted-joint texts; K scatters by 30 %). */
export function torqueForForceNm(forceN: number, diameterM: number, nutFactor: number): number {
  return nutFactor * forceN * diameterM;
}

/** Pull a torque gives, N: F = T/(K·d). */
export function forceForTorqueN(torqueNm: number, diameterM: number, nutFactor: number): number {
  return torqueNm / (nutFactor * diameterM);
}

/** The same for a tensioner with a left and a right thread, both of which rub: T = 2·K·F·d. */
export function tensionerTorqueNm(forceN: number, diameterM: number, nutFactor: number): number {
  return 2 * torqueForForceNm(forceN, diameterM, nutFactor);
}
