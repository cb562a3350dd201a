import { GAS_CONSTANT } from '../units/index.ts';
import type { CompiledNetwork } from './compile.ts';
import { chooseDonors, layFlows, layPlaces } from './evaluate.ts';
import type { Contents, LinkFlow, LinkRates } from './network.ts';

/** Absolute pressure of every cell, Pa, in network order. */
export function pressuresAbsPa(net: CompiledNetwork, contents: Contents): number[] {
  const { airMol, gasMol } = contents;
  const pressures: number[] = [];
  for (let i = 0; i < airMol.length; i += 1) pressures.push((airMol[i] + gasMol[i]) * net.paPerMol[i]);
  return pressures;
}

/** Mole fraction of fuel gas of every cell, in network order; 0 for an empty one. */
export function gasFractions(net: CompiledNetwork, contents: Contents): number[] {
  return Array.from({ length: net.cellCount }, (_, i) => {
    const total = contents.airMol[i] + contents.gasMol[i];
    return total > 0 ? contents.gasMol[i] / total : 0;
  });
}

/** What passes every link at a moment, in network order; atS counts only where a boundary's pressure moves. */
export function linkRates(net: CompiledNetwork, contents: Contents, atS = 0): LinkRates {
  loadState(net, contents);
  layPlaces(net, net.scratch.state, atS);
  chooseDonors(net);
  layFlows(net, false);
  const { air, gas } = net.scratch.flows;
  const airMolPerS: number[] = [];
  const gasMolPerS: number[] = [];
  for (let l = 0; l < net.linkCount; l += 1) {
    airMolPerS.push(air[l] + 0);
    gasMolPerS.push(gas[l] + 0);
  }
  return { airMolPerS, gasMolPerS };
}

/** The same, link by link. */
export function linkFlows(net: CompiledNetwork, contents: Contents, atS = 0): LinkFlow[] {
  const { airMolPerS, gasMolPerS } = linkRates(net, contents, atS);
  return airMolPerS.map((air, l) => ({ airMolPerS: air, gasMolPerS: gasMolPerS[l] }));
}

/** Moles of air and gas that fill a volume at a pressure, Pa absolute, and a mole fraction of gas. */
export function fillMol(
  volumeM3: number,
  pressureAbsPa: number,
  gasFraction: number,
  temperatureK: number,
): { airMol: number; gasMol: number } {
  const total = (pressureAbsPa * volumeM3) / (GAS_CONSTANT * temperatureK);
  return { airMol: total * (1 - gasFraction), gasMol: total * gasFraction };
}

/** Copies contents into the solver's work space, air and gas of a cell side by side. Throws RangeError if unsound. */
export function loadState(net: CompiledNetwork, contents: Contents): void {
  const { state } = net.scratch;
  if (contents.airMol.length !== net.cellCount || contents.gasMol.length !== net.cellCount) {
    throw new RangeError('Contents and network have different cells.');
  }
  for (let i = 0; i < net.cellCount; i += 1) {
    const air = contents.airMol[i];
    const gas = contents.gasMol[i];
    if (!(air >= 0 && gas >= 0 && air + gas < Infinity)) {
      throw new RangeError(`Cell ${net.network.cells[i].id} holds ${air} mol of air and ${gas} mol of gas.`);
    }
    state[2 * i] = air;
    state[2 * i + 1] = gas;
  }
}
