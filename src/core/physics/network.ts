/** What the flow laws need to know of a gas. */
export interface GasProperties {
  /** Molar mass, kg/mol. */
  molarMassKgPerMol: number;
  /** Ratio of heat capacities, cp/cv. */
  heatCapacityRatio: number;
  /** Dynamic viscosity, Pa·s. */
  viscosityPaS: number;
}

/** A lumped volume of gas at site temperature. */
export interface Cell {
  id: string;
  volumeM3: number;
}

/** A place whose pressure and composition the network does not change: the main, the atmosphere, a far end. */
export interface Boundary {
  id: string;
  pressureAbsPa: number;
  /** Mole fraction of fuel gas, 0 for air, 1 for the main. */
  gasFraction: number;
  /** A pressure that moves in time: p(t) = pressureAbsPa + ratePaPerS · (t − sinceS). Left out: it stands still. */
  ramp?: { ratePaPerS: number; sinceS: number };
}

/** How an opening passes gas. Areas are effective ones (discharge coefficient times area) where named cdAM2. */
export type Law =
  /** A hole or port: isentropic nozzle, choked and unchoked. */
  | { law: 'orifice'; cdAM2: number }
  /** A fine crack: laminar, as gap³ · (p1² − p2²), never more than a nozzle of its own open area. */
  | { law: 'slot'; perimeterM: number; gapM: number; lengthM: number; cd: number }
  /** A pipe: isothermal flow with Colebrook friction, laminar below Reynolds 2000, choked at its end. lossK is fittings. */
  | { law: 'pipe'; diameterM: number; lengthM: number; roughnessM: number; lossK?: number }
  /** A relief: one way, shut below setDropPa, full open from fullDropPa, smooth between. */
  | { law: 'relief'; cdAM2: number; setDropPa: number; fullDropPa: number }
  /** A check valve: one way, open once its light spring has given. */
  | { law: 'check'; cdAM2: number }
  /** A regulator: from supply to `to`, shut when `to` is at setAbsPa, full open bandPa below it. One way. */
  | { law: 'regulator'; cdAM2: number; setAbsPa: number; bandPa: number }
  /** A hand pump or blower: so many moles a second from `from` into `to`, whatever stands against it. */
  | { law: 'source'; molPerS: number };

/** An opening between two places, named by cell or boundary id. Flow counts positive from `from` to `to`. */
export type Link = { id: string; from: string; to: string } & Law;

/** Everything gas can move through at one moment of the job. Plain data: rebuilt when the assembly changes. */
export interface Network {
  cells: Cell[];
  boundaries: Boundary[];
  links: Link[];
  temperatureK: number;
  gas: GasProperties;
  air: GasProperties;
}

/** What the cells hold, in moles, in the order of the network's cells. */
export interface Contents {
  readonly airMol: readonly number[];
  readonly gasMol: readonly number[];
}

/** One accepted piece of time. */
export interface Step {
  endS: number;
  contents: Contents;
  /** What passed each link during the step, mol, positive from `from` to `to`, in the order of the network's links. */
  linkAirMol: number[];
  linkGasMol: number[];
  /** What the solver would try next; goes into the state, so that the next step depends on nothing else. */
  nextStepS: number;
  /** Accepted steps inside. */
  steps: number;
  /** How often the flows of the whole network were computed, refused tries included. */
  evaluations: number;
}

/** Instantaneous flow through a link, mol/s, positive from `from` to `to`. */
export interface LinkFlow {
  airMolPerS: number;
  gasMolPerS: number;
}

/** The same of all links at once, in network order: two lists instead of many objects. */
export interface LinkRates {
  readonly airMolPerS: readonly number[];
  readonly gasMolPerS: readonly number[];
}
