import { psig } from '../units/index.ts';
import type { GaugePa } from '../units/index.ts';

/*
 * Paraphrased from US federal rules; the official text governs, and so do the operator's written procedure and
 * local codes.
 */

/** Highest pressure of a distribution main this method is for: 60 psig, as 49 CFR 192.621(a) bounds such systems. */
export const DISTRIBUTION_LIMIT_GAUGE_PA: GaugePa = psig(60);

/**
 * Least leak-test pressure, gauge Pa, of a service line that is not plastic and works below 20 % of yield:
 * 49 CFR 192.511: 50 psig where the operating pressure is 1 to 40 psig, 90 psig above that.
 * The rule gives no figure below 1 psig; the same 50 psig is returned there, on the safe side.
 * Throws RangeError above 100 psig, where other sections rule.
 */
export function requiredServiceTestGaugePa(operatingGaugePa: number): GaugePa {
  if (!(operatingGaugePa >= 0)) throw new RangeError('An operating pressure is a number and not below zero.');
  if (operatingGaugePa > psig(100)) throw new RangeError('Above 100 psig another section rules.');
  return operatingGaugePa <= psig(40) ? psig(50) : psig(90);
}

/** The same in psig: 50 or 90. */
export function requiredServiceTestPsig(operatingPsig: number): 50 | 90 {
  return requiredServiceTestGaugePa(psig(operatingPsig)) > psig(50) ? 90 : 50;
}

/** Least leak-test pressure, gauge Pa, of a main below 100 psig that is not plastic: 49 CFR 192.509. */
export function requiredMainTestGaugePa(operatingGaugePa: number): GaugePa {
  if (!(operatingGaugePa >= 0)) throw new RangeError('An operating pressure is a number and not below zero.');
  return operatingGaugePa < psig(1) ? psig(10) : psig(90);
}

/** Depth of an excavation from which a ladder or ramp is due: 4 ft, 29 CFR 1926.651(c)(2). */
export const LADDER_DEPTH_M = 1.2192;
/** Farthest way to it: 25 ft, 29 CFR 1926.651(c)(2). */
export const LADDER_REACH_M = 7.62;
/** Depth from which walls are protected unless in stable rock: 5 ft, 29 CFR 1926.652(a). */
export const PROTECTION_DEPTH_M = 1.524;
