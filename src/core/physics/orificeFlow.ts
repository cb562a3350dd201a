import { type FlowAt, type Mixture, setStill } from './flowAt.ts';
import { type NozzleCurve, psiOverDrop, psiSlope } from './nozzle.ts';

/** The nozzle curves of the two gases; a mixture's flow function lies between them by mole fraction. */
export interface CurvePair {
  air: NozzleCurve;
  gas: NozzleCurve;
}

/**
 * Molar flow of an opening from a higher to a lower pressure: CdA·p1·Ψ(1 − p2/p1)/√(M·R·T). Slopes, where asked for, are
 * exact, byFrom being by the higher pressure. A pressure at or below zero passes nothing.
 *
 * Pressures, Pa absolute, are named by their place in a list: a number handed to a function that is not folded into its
 * caller is put into memory of its own each time, which took a tenth of all memory a job asks for.
 */
export function orificeFlow(
  { cdAM2 }: { readonly cdAM2: number },
  absPa: Float64Array,
  high: number,
  low: number,
  mixture: Mixture,
  curves: CurvePair,
  slopes: boolean,
  out: FlowAt,
): void {
  const highAbsPa = absPa[high];
  const lowAbsPa = absPa[low];
  if (!(highAbsPa > 0) || highAbsPa < lowAbsPa) {
    setStill(out);
    return;
  }
  const scale = cdAM2 / Math.sqrt(mixture.molarMassKgPerMol * mixture.rt);
  const ratio = lowAbsPa / highAbsPa;
  const drop = 1 - ratio;
  const x = mixture.fraction;
  const { air, gas } = curves;
  // of a pure gas, which most of it is, one curve is enough where no slopes are asked for
  if (!slopes && (x === 0 || x === 1)) {
    const curve = x === 0 ? air : gas;
    const y = drop < curve.chokeDrop ? drop : curve.chokeDrop;
    out.molPerS = scale * highAbsPa * (y * psiOverDrop(curve.coefficients, y));
    return;
  }
  const yAir = drop < air.chokeDrop ? drop : air.chokeDrop;
  const overAir = psiOverDrop(air.coefficients, yAir);
  const psiAir = yAir * overAir;
  const yGas = drop < gas.chokeDrop ? drop : gas.chokeDrop;
  const overGas = psiOverDrop(gas.coefficients, yGas);
  const psiGas = yGas * overGas;
  const psi = psiAir + x * (psiGas - psiAir);
  out.molPerS = scale * highAbsPa * psi;
  if (!slopes) return;
  const slopeAir = drop < air.chokeDrop ? psiSlope(air.coefficients, yAir, overAir) : 0;
  const slopeGas = drop < gas.chokeDrop ? psiSlope(gas.coefficients, yGas, overGas) : 0;
  const slope = slopeAir + x * (slopeGas - slopeAir);
  out.byFrom = scale * (psi + slope * ratio);
  out.byTo = -scale * slope;
  out.byFraction =
    scale * highAbsPa * (psiGas - psiAir) -
    (0.5 * out.molPerS * mixture.molarMassSlope) / mixture.molarMassKgPerMol;
}
