import { PSI_PA } from '../core/units/index.ts';
import type { Rgb, Theme } from './palette.ts';

/** Top of the scale, Pa gauge: the method's own limit, 60 psig (common practice, no source). */
export const SCALE_TOP_GAUGE_PA = 60 * PSI_PA;

type Lab = readonly [lightness: number, greenRed: number, blueYellow: number];

/**
 * Even in lightness from no pressure to the top, so that it reads the same with any colour vision and in grey;
 * hue says only air (grey) or gas (blue-violet). Ends are OKLab coordinates.
 */
const ends: Readonly<Record<Theme, { gasLow: Lab; gasHigh: Lab; airLow: Lab; airHigh: Lab }>> = {
  light: {
    gasLow: [0.93, -0.012, -0.035],
    gasHigh: [0.42, 0.02, -0.17],
    airLow: [0.93, 0, 0.004],
    airHigh: [0.42, 0, 0.004],
  },
  dark: {
    gasLow: [0.3, 0.01, -0.07],
    gasHigh: [0.84, -0.03, -0.09],
    airLow: [0.3, 0, 0],
    airHigh: [0.84, 0, 0],
  },
};

const mix = (a: Lab, b: Lab, t: number): Lab => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

const inUnit = (x: number): number => Math.max(0, Math.min(1, x));

/** Colour of gas in a cell, sRGB 0 to 1. */
export function gasColour(gaugePa: number, gasFraction: number, theme: Theme): Rgb {
  const t = inUnit(gaugePa / SCALE_TOP_GAUGE_PA);
  const e = ends[theme];
  return toSrgb(mix(mix(e.airLow, e.airHigh, t), mix(e.gasLow, e.gasHigh, t), inUnit(gasFraction)));
}

export interface LegendStop {
  readonly gaugePa: number;
  readonly gas: Rgb;
  readonly air: Rgb;
}

/** The scale as a legend draws it: a stop every ten psig. */
export const legend = (theme: Theme): LegendStop[] =>
  Array.from({ length: 7 }, (_, i) => {
    const gaugePa = (SCALE_TOP_GAUGE_PA * i) / 6;
    return { gaugePa, gas: gasColour(gaugePa, 1, theme), air: gasColour(gaugePa, 0, theme) };
  });

/** OKLab to sRGB (B. Ottosson's published matrices). */
function toSrgb([l, a, b]: Lab): Rgb {
  const cubed = (x: number) => x * x * x;
  const long = cubed(l + 0.3963377774 * a + 0.2158037573 * b);
  const medium = cubed(l - 0.1055613458 * a - 0.0638541728 * b);
  const short = cubed(l - 0.0894841775 * a - 1.291485548 * b);
  return [
    encode(4.0767416621 * long - 3.3077115913 * medium + 0.2309699292 * short),
    encode(-1.2684380046 * long + 2.6097574011 * medium - 0.3413193965 * short),
    encode(-0.0041960863 * long - 0.7034186147 * medium + 1.707614701 * short),
  ];
}

const encode = (linear: number): number => {
  const x = inUnit(linear);
  return x <= 0.0031308 ? 12.92 * x : 1.055 * Math.pow(x, 1 / 2.4) - 0.055;
};
