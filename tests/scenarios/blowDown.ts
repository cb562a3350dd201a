/** Inside diameters of the service, in: ASME B36.10M schedule 40. */
const INSIDE_IN = { '3/4': 0.824, '1': 1.049, '1-1/4': 1.38 } as const;
/** Gas in the tee's own barrel and port, m³ (assumed dimensions). */
const BARREL_M3 = { '3/4': 0.036e-3, '1': 0.065e-3, '1-1/4': 0.127e-3 } as const;
/** First chamber with the rod barrel on, m³ (the handbook's 2.29 L, assumed). */
const CHAMBER_M3 = 2.29e-3;
const ATM_PA = 101325;
const PSI_PA = 6894.757;

/**
 * How long a bleed of 3 mm, Cd 0.70, hisses from a gauge pressure down to 1 psi, s: isothermal volume, isentropic
 * nozzle, k 1.30, R 478.4 J/(kg·K), 60 °F. For 35 psig and 60 ft of NPS 1 the handbook gives 12.7 s.
 */
export function blowDownS(size: keyof typeof INSIDE_IN, psig: number, lengthM: number): number {
  const insideM = INSIDE_IN[size] * 0.0254;
  const volumeM3 = CHAMBER_M3 + BARREL_M3[size] + (Math.PI / 4) * insideM * insideM * lengthM;
  const areaM2 = 0.7 * (Math.PI / 4) * 0.003 * 0.003;
  const [k, rt] = [1.3, 478.4 * 288.7056];
  const critical = Math.pow(2 / (k + 1), k / (k - 1));
  const stepS = 0.002;
  let pa = ATM_PA + psig * PSI_PA;
  let atS = 0;
  while (pa - ATM_PA > PSI_PA) {
    const ratio = Math.max(ATM_PA / pa, critical);
    const flow = Math.pow(ratio, 2 / k) - Math.pow(ratio, (k + 1) / k);
    const kgPerS = areaM2 * pa * Math.sqrt(((2 * k) / ((k - 1) * rt)) * flow);
    pa -= ((kgPerS * rt) / volumeM3) * stepS;
    atS += stepS;
  }
  return atS;
}
