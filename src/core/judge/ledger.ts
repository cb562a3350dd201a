/** Molar mass of the fuel gas, kg/mol: specific gravity 0.60, the catalogue's own figure (a test holds them equal). */
export const GAS_KG_PER_MOL = 0.01737882;
/** Molar mass of air, kg/mol, for what is pushed into the main. */
export const AIR_KG_PER_MOL = 0.0289647;
