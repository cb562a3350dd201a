import { INCH_M } from '../../core/units/index.ts';
import { decimals, type Units } from '../../text/index.ts';

/** A length as read off a steel rule: hundredths of an inch or tenths of a millimetre; m in. */
export function ruleFigure(lengthM: number, units: Units): string {
  return units.system === 'us' ? `${decimals(lengthM / INCH_M, 2)} in` : `${decimals(lengthM * 1000, 1)} mm`;
}
