import { constants } from '../catalogue/index.ts';
import { GAS_CONSTANT, ln } from '../units/index.ts';
import { darcyFrictionFactor } from './friction.ts';
import type { LawCase } from './lawTable.ts';
import { nozzleCurve, nozzleMassFlowKgPerS } from './nozzle.ts';
import { pipeMassFlowKgPerS, pipeSize } from './pipeFlow.ts';
import { ballValveAreaM2 } from './valveArea.ts';

/*
 * Reference cases that our laws answer in their own way: a sizing formula fitted to long mains, an adiabatic pipe, a
 * valve told by its coefficient. Ours is printed beside theirs, with why the two part; how far, the tests say.
 */

/** A case answered by a law that was not made to agree with it. */
export interface Apart {
  readonly ours: number;
  readonly note: string;
}

type Read = (row: LawCase, name: string) => number;

const LONG_PIPE =
  'a sizing formula fitted to long mains; ours is the pipe itself, by Colebrook and isothermal';
const AIR_G_PER_MOL = 28.9647;
/** Viscosity the sizing tables take, Pa·s. */
const SIZING_VISCOSITY_PAS = 1.2e-5;
/** Effective opening of a flow coefficient of 1 m³/h of water at 1 bar, m²: Q = CdA·√(2·Δp/ρ). */
const CDA_OF_KV_M2 = 1 / 3600 / Math.sqrt((2 * 1e5) / 1000);

/** Volume flow of our pipe, m³/s at the formula's own standard temperature and pressure. */
export function longPipe(row: LawCase, read: Read): Apart {
  const molarMassKgPerMol = (read(row, 'SG') * AIR_G_PER_MOL) / 1000;
  const rt = GAS_CONSTANT * read(row, 'Tavg');
  const pipe = pipeSize(read(row, 'D'), read(row, 'L'), constants.pipeRoughnessM.value, 0);
  const low = read(row, 'P2');
  // the low-pressure form takes gauge pressures
  const lift = low < read(row, 'Ps') / 2 ? read(row, 'Ps') : 0;
  const viscosityPaS = typeof row.inputs.mu === 'number' ? row.inputs.mu : constants.gasViscosityPaS.value;
  const kgPerS = pipeMassFlowKgPerS(pipe, read(row, 'P1') + lift, low + lift, {
    molarMassKgPerMol,
    viscosityPaS,
    rt,
  });
  const perM3 = (read(row, 'Ps') * molarMassKgPerMol) / (GAS_CONSTANT * read(row, 'Ts'));
  return { ours: kgPerS / perM3, note: LONG_PIPE };
}

/** The same beside the sizing tables' own equation, m³/s at 60 °F and 14.73 psia. */
export function sizingEquation(row: LawCase, read: Read): Apart {
  const { gasMolarMassKgPerMol, siteTemperatureK, pipeRoughnessM } = constants;
  const rt = GAS_CONSTANT * siteTemperatureK.value;
  const pipe = pipeSize(read(row, 'D'), read(row, 'L'), pipeRoughnessM.value, 0);
  const kgPerS = pipeMassFlowKgPerS(pipe, read(row, 'P1'), read(row, 'P2'), {
    molarMassKgPerMol: gasMolarMassKgPerMol.value,
    viscosityPaS: SIZING_VISCOSITY_PAS,
    rt,
  });
  return { ours: kgPerS / ((101559.8 * gasMolarMassKgPerMol.value) / rt), note: LONG_PIPE };
}

/** Friction f·L/D that chokes a pipe entered at a Mach number: (1 − kM²)/(kM²) + ln(kM²), from Mach 1/√k at its end. */
export function chokingFriction(row: LawCase, read: Read): Apart {
  const mach = read(row, 'M');
  const square = read(row, 'k') * mach * mach;
  return {
    ours: (1 - square) / square + ln(square),
    note: 'Fanno flow is adiabatic and chokes at Mach 1; ours is isothermal and chokes at 1/√k',
  };
}

/** Flow coefficient of the nozzle that passes the same, m³/h of water at 1 bar. */
export function valveBySizing(row: LawCase, read: Read): Apart {
  const molarMassKgPerMol = read(row, 'MW') / 1000;
  // the flow is given at 0 °C and 1 atm
  const kgPerS = (read(row, 'Q') * 101325 * molarMassKgPerMol) / (GAS_CONSTANT * 273.15);
  const perM2 = nozzleMassFlowKgPerS(
    nozzleCurve(read(row, 'gamma')),
    { cdAM2: 1, upstreamAbsPa: read(row, 'P1'), downstreamAbsPa: read(row, 'P2') },
    { molarMassKgPerMol: molarMassKgPerMol / read(row, 'Z'), temperatureK: read(row, 'T') },
  );
  return {
    ours: kgPerS / perM2 / CDA_OF_KV_M2,
    note: 'a valve of ours is a nozzle of its opening; the standard’s valve recovers pressure and chokes later',
  };
}

/** A Reynolds number beyond all smoothness. */
const ROUGH_REYNOLDS = 1e9;

/** Flow coefficient of our ball valve turned so far from open: its free area times the discharge of a bore. */
export function valveByArea(row: LawCase, read: Read): Apart {
  const turnedDeg = row.inputs.angle_closed_deg;
  if (typeof turnedDeg !== 'number') {
    return {
      ours: 3 * darcyFrictionFactor(ROUGH_REYNOLDS, constants.pipeRoughnessM.value / read(row, 'D1')),
      note: 'the loss of an open bore, three times the friction of fully rough flow, by our Colebrook',
    };
  }
  const boreM = read(row, 'D');
  const areaM2 = ballValveAreaM2(boreM, boreM * Math.sqrt(2), (turnedDeg * Math.PI) / 180);
  return {
    ours: (constants.boreDischarge.value * areaM2) / CDA_OF_KV_M2,
    note: 'ours is a sharp-edged opening of that area, which regains no pressure behind it',
  };
}
