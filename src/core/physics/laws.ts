import { constants, pipes } from '../catalogue/index.ts';
import { GAS_CONSTANT } from '../units/index.ts';
import { adiabaticBlowdownS } from './blowdown.ts';
import { compile } from './compile.ts';
import { fillMol, linkFlows, pressuresAbsPa } from './contents.ts';
import { darcyFrictionFactor } from './friction.ts';
import { type LawCase, parseLawTable } from './lawTable.ts';
import { chokingFriction, longPipe, sizingEquation, valveByArea, valveBySizing } from './lawsApart.ts';
import { criticalRatio, nozzleCurve, nozzleMassFlowKgPerS, nozzlePsi } from './nozzle.ts';
import { isothermalChokeAbsPa, pipeMassFlowKgPerS, pipeSize } from './pipeFlow.ts';
import { firstStepS, stepTo } from './solver.ts';

/** One row held against our own law. `ours` is null, with a note, where our laws do not claim the row. */
export interface LawCheck {
  case_id: string;
  ours: number | null;
  theirs: number;
  /** (ours − theirs)/theirs. */
  relative: number | null;
  note?: string;
}

type Answer = number | { ours: number | null; note: string };

/**
 * Holds our laws against a table of reference cases (columns as in the reference table of the open library
 * `fluids`). Anyone can bring a table of their own. Throws SyntaxError where the table cannot be read, RangeError where
 * a row lacks an input its group needs.
 */
export function checkLaws(csvText: string): LawCheck[] {
  return parseLawTable(csvText).map((row) => {
    const law = LAWS[row.group];
    const answer: Answer = law === undefined ? unclaimed('no law of ours goes by this name') : law(row);
    const { ours, note } = typeof answer === 'number' ? { ours: answer, note: undefined } : answer;
    const relative = ours === null ? null : ours / row.value - 1;
    const check = { case_id: row.caseId, ours, theirs: row.value, relative };
    return note === undefined ? check : { ...check, note };
  });
}

const LAWS: Readonly<Record<string, (row: LawCase) => Answer>> = {
  air_table: orifice,
  orifice,
  api520_A: (row) => read(row, 'm') / (massFlux(row) * read(row, 'Kd')),
  api520_C: (row) => (3.6 / Math.sqrt(1000 * GAS_CONSTANT)) * nozzlePsi(nozzleCurve(read(row, 'k')), 0),
  api520_F2: (row) => {
    const ratio = read(row, 'P2') / read(row, 'P1');
    return nozzlePsi(nozzleCurve(read(row, 'k')), ratio) / Math.sqrt(2 * (1 - ratio));
  },
  blowdown,
  colebrook: (row) => darcyFrictionFactor(read(row, 'Re'), read(row, 'eD')),
  laminar: (row) => darcyFrictionFactor(read(row, 'Re'), 0),
  crit_gauge: (row) => read(row, 'P2') / criticalRatio(read(row, 'k')) - read(row, 'P2'),
  crit_ratio: (row) => criticalRatio(read(row, 'k')),
  ifgc_darcy: sizingPipe,
  isothermal_gas: (row) => ({
    ours: pipeMass(row, constants.pipeRoughnessM.value, 1.08e-5),
    note: 'the library takes the mean density where the integral takes p1·M/(R·T): it reads √((p1+p2)/(2·p1)) of ours',
  }),
  isothermal_Pcf: (row) =>
    isothermalChokeAbsPa(read(row, 'P'), (read(row, 'fd') * read(row, 'L')) / read(row, 'D')),
  pipe_b36_10: pipeDimension,
  fanno: (row) => chokingFriction(row, read),
  iec60534: (row) => valveBySizing(row, read),
  valve_K: (row) => valveByArea(row, read),
  ifgc_equation: (row) => sizingEquation(row, read),
  igt: (row) => longPipe(row, read),
  muller: (row) => longPipe(row, read),
  panhandle_a: (row) => longPipe(row, read),
  spitzglass_high: (row) => longPipe(row, read),
  spitzglass_low: (row) => longPipe(row, read),
  weymouth: (row) => longPipe(row, read),
};

function unclaimed(note: string): Answer {
  return { ours: null, note };
}

function read(row: LawCase, name: string): number {
  const value = row.inputs[name];
  if (typeof value !== 'number') throw new RangeError(`Case ${row.caseId} has no number called ${name}.`);
  return value;
}

function orifice(row: LawCase): number {
  const diameterM = read(row, 'd');
  return nozzleMassFlowKgPerS(
    nozzleCurve(read(row, 'k')),
    {
      cdAM2: (read(row, 'Cd') * Math.PI * diameterM * diameterM) / 4,
      upstreamAbsPa: read(row, 'P1'),
      downstreamAbsPa: read(row, 'P2'),
    },
    {
      molarMassKgPerMol: read(row, 'MW_g_per_mol') / 1000 / read(row, 'Z'),
      temperatureK: read(row, 'T1'),
    },
  );
}

/** kg/(s·m²) of an ideal nozzle; compressibility counts as a lighter gas would not: as M/Z. */
function massFlux(row: LawCase): number {
  return nozzleMassFlowKgPerS(
    nozzleCurve(read(row, 'k')),
    { cdAM2: 1, upstreamAbsPa: read(row, 'P1'), downstreamAbsPa: read(row, 'P2') },
    { molarMassKgPerMol: read(row, 'MW') / 1000 / read(row, 'Z'), temperatureK: read(row, 'T') },
  );
}

/** Time to empty a vessel to the end of choking, by our own solver. */
function blowdown(row: LawCase): Answer {
  const diameterM = read(row, 'd');
  const volumeM3 = read(row, 'V');
  const temperatureK = read(row, 'T0');
  const gas = {
    molarMassKgPerMol: read(row, 'MW_g_per_mol') / 1000,
    heatCapacityRatio: read(row, 'k'),
    viscosityPaS: constants.gasViscosityPaS.value,
  };
  const net = compile({
    cells: [{ id: 'vessel', volumeM3 }],
    boundaries: [{ id: 'air', pressureAbsPa: 101325, gasFraction: 0 }],
    links: [
      {
        id: 'hole',
        from: 'vessel',
        to: 'air',
        law: 'orifice',
        cdAM2: (read(row, 'Cd') * Math.PI * diameterM * diameterM) / 4,
      },
    ],
    temperatureK,
    gas,
    air: gas,
  });
  const fill = fillMol(volumeM3, read(row, 'P0'), 1, temperatureK);
  const start = { airMol: [0], gasMol: [fill.gasMol] };
  const endPa = read(row, 'P_end');
  if (row.inputs.adiabatic === true) {
    const tauS = fill.gasMol / linkFlows(net, start)[0].gasMolPerS;
    const ours = adiabaticBlowdownS(tauS, endPa / read(row, 'P0'), gas.heatCapacityRatio);
    return { ours, note: 'the bound beside our isothermal cells, in closed form' };
  }
  let low = 0;
  let high = 1;
  const pressureAfter = (durationS: number): number =>
    pressuresAbsPa(net, stepTo(net, 0, start, firstStepS(net, 0, start), durationS).contents)[0];
  while (pressureAfter(high) > endPa) high *= 2;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (pressureAfter(middle) > endPa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function pipeMass(row: LawCase, roughnessM: number, viscosityPaS: number): number {
  const pipe = pipeSize(read(row, 'D'), read(row, 'L'), roughnessM, 0);
  return pipeMassFlowKgPerS(pipe, read(row, 'P1'), read(row, 'P2'), {
    molarMassKgPerMol: constants.gasMolarMassKgPerMol.value,
    viscosityPaS,
    rt: GAS_CONSTANT * constants.siteTemperatureK.value,
  });
}

/** Volume flow at 60 °F and 14.73 psia, as the sizing tables count it, m³/s. */
function sizingPipe(row: LawCase): number {
  const massKgPerS = pipeMass(row, read(row, 'eps'), read(row, 'mu'));
  const perM3 = (101559.8 * constants.gasMolarMassKgPerMol.value) / (GAS_CONSTANT * read(row, 'T'));
  return massKgPerS / perM3;
}

const NPS_BY_NUMBER = {
  '0.75': '3/4',
  '1': '1',
  '1.25': '1-1/4',
  '1.5': '1-1/2',
  '2': '2',
  '3': '3',
  '4': '4',
  '6': '6',
  '8': '8',
  '10': '10',
  '12': '12',
} as const;

function pipeDimension(row: LawCase): Answer {
  const size = NPS_BY_NUMBER[String(read(row, 'NPS')) as keyof typeof NPS_BY_NUMBER];
  const pipe = pipes[size];
  if (row.output === 'OD') return pipe.odM;
  if (row.output === 'ID') return pipe.idM;
  return row.output === 'wall' ? pipe.wallM : unclaimed('not a dimension we keep');
}
