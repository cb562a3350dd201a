import { constants } from '../catalogue/index.ts';
import type { GasProperties } from './network.ts';

/** The fuel gas of the catalogue, as the flow laws take it. */
export const FUEL_GAS: GasProperties = {
  molarMassKgPerMol: constants.gasMolarMassKgPerMol.value,
  heatCapacityRatio: constants.gasHeatCapacityRatio.value,
  viscosityPaS: constants.gasViscosityPaS.value,
};

/** Air, likewise. */
export const AIR: GasProperties = {
  molarMassKgPerMol: constants.airMolarMassKgPerMol.value,
  heatCapacityRatio: constants.airHeatCapacityRatio.value,
  viscosityPaS: constants.airViscosityPaS.value,
};
