import type { Contents, LinkFlow, Network } from './network.ts';

/** A network made ready for the solver: indexes, numbers laid flat, scratch. Results never depend on the scratch. */
export interface CompiledNetwork {
  readonly network: Network;
  readonly cellIndex: ReadonlyMap<string, number>;
  readonly linkIndex: ReadonlyMap<string, number>;
}

/** Makes a network ready. Cheap (µs): do it whenever the assembly changes. Throws RangeError on an unknown id. */
export declare function compile(network: Network): CompiledNetwork;

/** Absolute pressure of every cell, Pa, in network order. */
export declare function pressuresAbsPa(net: CompiledNetwork, contents: Contents): number[];

/** Mole fraction of fuel gas of every cell, in network order; 0 for an empty one. */
export declare function gasFractions(net: CompiledNetwork, contents: Contents): number[];

/** What passes every link at this moment. */
export declare function linkFlows(net: CompiledNetwork, contents: Contents, atS?: number): LinkFlow[];

/** Moles of air and gas that fill a cell at a pressure, Pa absolute, and mole fraction of gas. */
export declare function contentsAt(
  net: { temperatureK: number },
  volumeM3: number,
  pressureAbsPa: number,
  gasFraction: number,
): { airMol: number; gasMol: number };
