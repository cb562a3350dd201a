import { decimals } from '../../text/index.ts';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A number of any size to so many figures, in the language of the moment; powers of ten where it is very small or large. */
export function figure(value: number, figures = 4): string {
  if (!Number.isFinite(value)) return '–';
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e7) return trimmed(value, Math.max(0, figures - 1 - exponentOf(value)));
  const exponent = exponentOf(value);
  return `${trimmed(value / 10 ** exponent, figures - 1)} × 10${power(exponent)}`;
}

/** A share as per cent to two figures, with its sign where that is asked for. */
export function perCent(share: number, signed = false): string {
  const text = figure(Number((100 * share).toPrecision(2)), 2);
  return `${signed && share > 0 ? '+' : ''}${text.replace('-', '−')} %`;
}

function exponentOf(value: number): number {
  return Math.floor(Math.log10(Math.abs(value)) + 1e-12);
}

/** Without zeros that say nothing. */
function trimmed(value: number, places: number): string {
  const text = decimals(value, places).replace('-', '−');
  return /[.,]/.test(text) ? text.replace(/0+$/, '').replace(/[.,]$/, '') : text;
}

function power(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => raised[Number(digit)]).join('');
  return `${exponent < 0 ? '⁻' : ''}${digits}`;
}
