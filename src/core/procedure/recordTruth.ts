import { PSI_PA } from '../units/index.ts';
import { serviceVolumeM3, workOf, type RecordField } from '../rig/index.ts';
import { every, latest } from './recall.ts';
import { serviceCapped } from './evidence/h08TeeFits.ts';
import type { Told } from './told.ts';

/** How near a written pressure must come to one that was really read, Pa (one division). */
const WRITTEN_SLACK_PA = PSI_PA;

/**
 * Whether a field of the record was written and agrees with what really was read, seen or done. Invented figures
 * are the plainest false record; wording is free.
 */
export function recordTrue(told: Told, field: RecordField, value: string): boolean {
  if (value.trim() === '') return false;
  const { facts } = told;
  switch (field) {
    case 'mainPressure':
      return matchesAny(value, reads(told, 'main'));
    case 'proof1':
      return matchesAny(value, proofReads(told, 'tee'));
    case 'proof2':
      return matchesAny(value, proofReads(told, 'coupling'));
    case 'leakTest':
      return latest(facts, 'leak.looked', (f) => f.at === 'closingPlug' || f.at === 'newPlug') !== null;
    case 'testDuration':
      return minutesTrue(value, longestHoldS(told, 'head'));
    case 'serviceTestDuration':
      return minutesTrue(value, longestHoldS(told, 'test'));
    case 'serviceTest':
      return matchesAny(value, reads(told, 'test'));
    case 'gasPurge': {
      const written = firstNumber(value);
      const read = latest(facts, 'riser.read');
      return written !== null && read !== null && Math.abs(written / 100 - read.gasShare) <= PURGE_SLACK;
    }
    case 'abandonedFacility':
      return latest(facts, 'branch.cut', (f) => f.part === 'through') !== null;
    case 'disconnected':
      return latest(facts, 'branch.cut', (f) => f.part === 'through') !== null;
    case 'purged':
      return purgedOrSmall(told);
    case 'sealed':
      return (
        (workOf(told.job) === 'renew' || latest(facts, 'closing.turned') !== null) && serviceCapped(told)
      );
    case 'testMedium':
      return [...proofReads(told, 'tee'), ...proofReads(told, 'coupling')].length > 0;
    case 'leaksFound':
    case 'operator':
    case 'crew':
      return true;
  }
}

/** Purged, or of so little gas space that the operator lets it be. What is written about it changes neither. */
export function purgedOrSmall({ facts, limits, job }: Told): boolean {
  return latest(facts, 'service.purged') !== null || serviceVolumeM3(job) < limits.smallServiceM3;
}

/** A written share of gas may be off by this much. */
const PURGE_SLACK = 0.015;
/** A written time may be rounded by half a minute, s. */
const ROUNDED_S = 30;

/** A time written in minutes: not longer than what was really held. */
function minutesTrue(value: string, heldS: number): boolean {
  const minutes = firstNumber(value);
  return minutes !== null && minutes > 0 && heldS > 0 && minutes * 60 <= heldS + ROUNDED_S;
}

/** The longest time between two readings of a gauge at the main's pressure or above, s. */
function longestHoldS(told: Told, gauge: 'head' | 'test'): number {
  const leastPa = Math.min(...reads(told, 'main')) - WRITTEN_SLACK_PA;
  let startS: number | null = null;
  let longestS = 0;
  for (const f of told.facts) {
    if (f.fact === (gauge === 'head' ? 'vent.turned' : 'testSet.vented')) startS = null;
    if (f.fact !== 'gauge.read' || f.gauge !== gauge || f.readingGaugePa < leastPa) continue;
    startS ??= f.atS;
    longestS = Math.max(longestS, f.atS - startS);
  }
  return longestS;
}

function reads(told: Told, gauge: 'main' | 'head' | 'test'): readonly number[] {
  return every(told.facts, 'gauge.read', (f) => f.gauge === gauge).map((f) => f.readingGaugePa);
}

/** What the head showed while a chamber stood at the main's pressure: the only figures a proof can be written from. */
function proofReads(told: Told, seat: 'tee' | 'coupling'): readonly number[] {
  const leastPa = Math.min(...reads(told, 'main')) - WRITTEN_SLACK_PA;
  return every(told.facts, 'gauge.read', (f) => f.gauge === 'head' && f.under.saddleOn === seat)
    .map((f) => f.readingGaugePa)
    .filter((readingPa) => readingPa >= leastPa);
}

function matchesAny(value: string, readings: readonly number[]): boolean {
  const written = firstNumber(value);
  if (written === null) return false;
  const unitPa = value.toLowerCase().includes('kpa')
    ? 1000
    : value.toLowerCase().includes('bar')
      ? 1e5
      : PSI_PA;
  return readings.some((pa) => Math.abs(pa - written * unitPa) <= WRITTEN_SLACK_PA);
}

/** The first figure in a line of writing, or null. */
export function firstNumber(value: string): number | null {
  const found = /[0-9]+(?:[.,][0-9]+)?/.exec(value);
  return found ? Number(found[0].replace(',', '.')) : null;
}
