import { forceForTorqueN, torqueForForceNm } from './torque.ts';
import { circleM2 } from './forces.ts';

/** A bore stopper: rubber between washers, squeezed by a screw until it bears on the bore. */
export interface StopperRubber {
  boreM: number;
  freeM: number;
  coreM: number;
  lengthM: number;
  shearModulusPa: number;
  screwM: number;
  nutFactor: number;
}

/** What a torque has made of it. */
export interface StopperFit {
  /** Outer diameter now, m; the bore's once it fills. */
  diameterM: number;
  filled: boolean;
  /** Mean radial stress on the wall, Pa; zero until it fills. */
  wallStressPa: number;
  /** Length of rubber on the wall, m. */
  contactM: number;
}

/**
 * The rubber is taken as incompressible and neo-Hookean: it shortens until it fills the bore, and from there on the
 * axial squeeze is handed to the wall as a fluid would hand it. Axial force is T/(K·d) of the inner rod's screw.
 */
export function squeezeStopper(stopper: StopperRubber, torqueNm: number): StopperFit {
  const forceN = forceForTorqueN(Math.max(0, torqueNm), stopper.screwM, stopper.nutFactor);
  const fillN = fillForceN(stopper);
  if (forceN >= fillN) {
    return {
      diameterM: stopper.boreM,
      filled: true,
      wallStressPa: (forceN - fillN) / boreRingM2(stopper),
      contactM: stopper.lengthM * fillStretch(stopper),
    };
  }
  const stretch = stretchUnder(forceN / (stopper.shearModulusPa * freeRingM2(stopper)));
  const core2 = stopper.coreM * stopper.coreM;
  return {
    diameterM: Math.sqrt(core2 + (stopper.freeM * stopper.freeM - core2) / stretch),
    filled: false,
    wallStressPa: 0,
    contactM: 0,
  };
}

/** Torque at which the rubber fills the bore, N·m. */
export function fillTorqueNm(stopper: StopperRubber): number {
  return torqueForForceNm(fillForceN(stopper), stopper.screwM, stopper.nutFactor);
}

/** Torque that brings a wall stress, N·m. */
export function torqueForWallStressNm(stopper: StopperRubber, wallStressPa: number): number {
  const forceN = fillForceN(stopper) + wallStressPa * boreRingM2(stopper);
  return torqueForForceNm(forceN, stopper.screwM, stopper.nutFactor);
}

/** Friction that holds a fitted stopper against thrust, N: μ·σ·wall area. */
export function stopperFrictionN(stopper: StopperRubber, fit: StopperFit, friction: number): number {
  return friction * fit.wallStressPa * Math.PI * stopper.boreM * fit.contactM;
}

/** Torque that holds a pressure drop by friction, N·m. */
export function holdTorqueNm(stopper: StopperRubber, dropPa: number, friction: number): number {
  const wallM2 = Math.PI * stopper.boreM * stopper.lengthM * fillStretch(stopper);
  return torqueForWallStressNm(stopper, (dropPa * circleM2(stopper.boreM)) / (friction * wallM2));
}

/** How a stopper seals: as an open ring, a closing slot, or sealed down to its flaws. */
export interface StopperLeak {
  /** Open ring round an unfilled stopper, m²; zero once it fills. */
  openAreaM2: number;
  /** Gap under the rubber once it touches, m. */
  gapM: number;
  perimeterM: number;
  lengthM: number;
}

/**
 * The leak past a stopper: an open ring until it fills; then gap0·(1 − σ/σ_seal)³ with σ_seal the gas pressure plus a
 * margin (more on a scaled bore). Flaws (a weep, worn rubber) come on top and are the caller's.
 */
export function stopperLeak(
  stopper: StopperRubber,
  fit: StopperFit,
  gaugePa: number,
  marginPa: number,
  touchGapM: number,
): StopperLeak {
  const open = fit.filled ? 0 : circleM2(stopper.boreM) - circleM2(fit.diameterM);
  const missing = Math.max(0, 1 - fit.wallStressPa / (Math.max(0, gaugePa) + marginPa));
  return {
    openAreaM2: open,
    gapM: touchGapM * missing * missing * missing,
    perimeterM: Math.PI * stopper.boreM,
    lengthM: stopper.lengthM * fillStretch(stopper),
  };
}

function freeRingM2(stopper: StopperRubber): number {
  return circleM2(stopper.freeM) - circleM2(stopper.coreM);
}

function boreRingM2(stopper: StopperRubber): number {
  return circleM2(stopper.boreM) - circleM2(stopper.coreM);
}

/** Length over free length when the bore is just filled; 1 for a stopper that does not go in. */
function fillStretch(stopper: StopperRubber): number {
  return Math.min(1, freeRingM2(stopper) / boreRingM2(stopper));
}

function fillForceN(stopper: StopperRubber): number {
  const stretch = fillStretch(stopper);
  return stopper.shearModulusPa * freeRingM2(stopper) * (1 / (stretch * stretch) - stretch);
}

/** Solves 1/λ² − λ = f for λ in (0, 1]: λ³ + f·λ² − 1 = 0, by Newton from 1, which stays above the root. */
function stretchUnder(f: number): number {
  let stretch = 1;
  for (let i = 0; i < 30; i += 1) {
    const value = stretch * stretch * (stretch + f) - 1;
    stretch -= value / (stretch * (3 * stretch + 2 * f));
  }
  return stretch;
}
