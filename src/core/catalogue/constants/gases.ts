import { assumed, fromMemory, published } from './constant.ts';

/** The two gases of the model and what burns. */
export const gasConstants = {
  gasMolarMassKgPerMol: published(
    [0.01737882, 'kg/mol', 0.016, 0.0189],
    'ratio 0.60 to air, the usual sizing gas of IFGC/NFPA 54',
    'molar mass of the fuel gas, specific gravity 0.60',
  ),
  gasHeatCapacityRatio: published(
    [1.3, '-', 1.27, 1.31],
    'API 520-1 and gas handbooks give 1.27 to 1.30 for natural gas',
    'cp/cv of the fuel gas',
  ),
  gasViscosityPaS: published(
    [1.2e-5, 'Pa·s', 1.08e-5, 1.2e-5],
    'IFGC/NFPA 54 sizing basis, 0.012 cP',
    'viscosity of the fuel gas',
  ),
  airMolarMassKgPerMol: fromMemory(
    [0.0289647, 'kg/mol', 0.0289647, 0.0289647],
    'US Standard Atmosphere',
    'molar mass of dry air',
  ),
  airHeatCapacityRatio: published([1.4, '-', 1.4, 1.4], 'any gas-dynamics text', 'cp/cv of air'),
  airViscosityPaS: fromMemory(
    [1.79e-5, 'Pa·s', 1.77e-5, 1.82e-5],
    'handbook, near 15 °C',
    'viscosity of air',
  ),
  siteTemperatureK: published(
    [288.7056, 'K', 263, 308],
    '60 °F, base temperature of the sizing tables',
    'temperature of metal and gas; all cells are isothermal',
  ),
  lelNfpaFraction: published(
    [0.05, '-', 0.05, 0.05],
    'NFPA 325, USBM Bulletin 627',
    'lower flammable limit of methane in air, by volume',
  ),
  lelIecFraction: published([0.044, '-', 0.044, 0.044], 'IEC 60079-20-1', 'the same limit on the IEC basis'),
  uelFraction: published(
    [0.15, '-', 0.15, 0.17],
    'NFPA 325, USBM Bulletin 627',
    'upper flammable limit of methane',
  ),
  odourFraction: published(
    [0.01, '-', 0.0015, 0.01],
    '49 CFR 192.625(a): one fifth of the lower limit',
    'gas in air that a normal nose must readily smell',
  ),
  purgeEndGasFraction: assumed([0.9, '-', 0.85, 0.95], 'gas fraction at the vent that ends a purge'),
  gwpFossilMethane: published(
    [29.8, '-', 28, 29.8],
    'IPCC AR6, fossil methane, 100 years',
    'warming potential',
  ),
} as const;
