import { constants } from '../../src/core/catalogue/index.ts';
import {
  AIR,
  compile,
  type Contents,
  fillMol,
  firstStepS,
  FUEL_GAS,
  type Law,
  type Network,
  pressuresAbsPa,
  type Step,
  stepTo,
} from '../../src/core/physics/index.ts';
import { ATM_PA, psi, toPsi } from '../../src/core/units/index.ts';

export const SITE_K = constants.siteTemperatureK.value;
export const fuelGas = FUEL_GAS;
export const air = AIR;
export const MM2 = 1e-6;
export const LITRE = 1e-3;

/** Absolute pressure of so many psig, Pa. */
export const abs = (psig: number): number => ATM_PA + psi(psig);
/** psig of an absolute pressure. */
export const gauge = (absPa: number): number => toPsi(absPa - ATM_PA);

/** One vessel with openings to the main and to the air. */
export function vessel(
  volumeM3: number,
  links: ({ id: string; between: 'main-vessel' | 'vessel-air' | 'air-vessel' } & Law)[],
  mainPsig = 35,
): Network {
  return {
    cells: [{ id: 'vessel', volumeM3 }],
    boundaries: [
      { id: 'main', pressureAbsPa: abs(mainPsig), gasFraction: 1 },
      { id: 'air', pressureAbsPa: ATM_PA, gasFraction: 0 },
    ],
    links: links.map(({ between, ...rest }) => ({ ...rest, ...ends(between) })),
    temperatureK: SITE_K,
    gas: fuelGas,
    air,
  };
}

function ends(between: string): { from: string; to: string } {
  const [from, to] = between.split('-');
  return { from, to };
}

/** Contents of every cell at its own pressure, psig, and gas fraction. */
export function filled(network: Network, psig: readonly number[], gasFraction: readonly number[]): Contents {
  const fills = network.cells.map((cell, i) => fillMol(cell.volumeM3, abs(psig[i]), gasFraction[i], SITE_K));
  return { airMol: fills.map((fill) => fill.airMol), gasMol: fills.map((fill) => fill.gasMol) };
}

/** Runs a network for a time from contents. */
export function run(network: Network, contents: Contents, durationS: number): Step {
  const net = compile(network);
  return stepTo(net, 0, contents, firstStepS(net, 0, contents), durationS);
}

/** Gauge pressures of all cells after a time, psig. */
export function psigAfter(network: Network, contents: Contents, durationS: number): number[] {
  return pressuresAbsPa(compile(network), run(network, contents, durationS).contents).map(gauge);
}

/** First time a vessel's gauge pressure falls to a mark, s, by halving. */
export function timeToPsig(network: Network, contents: Contents, markPsig: number, withinS: number): number {
  const falling = psigAfter(network, contents, 0)[0] > markPsig;
  let low = 0;
  let high = withinS;
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    const now = psigAfter(network, contents, middle)[0];
    if (now > markPsig === falling) low = middle;
    else high = middle;
  }
  return high;
}
