import {
  cradleMains,
  kitKinds,
  sizedBy,
  workOf,
  type Job,
  type KitEntry,
  type KitKind,
  type MainSize,
  type TeeSize,
} from '../rig/index.ts';
import { stages } from '../procedure/index.ts';
import { faultProblems, withStartingFaults } from './faultCross.ts';
import type { Problem } from './problem.ts';
import type { Scenario } from './schema.ts';

/**
 * Tees a main's crown has room for: a coupling wider than 0.95 of the main's outside cannot be welded on.
 * A main that is not named takes every size.
 */
const teesOnSmallMains: Readonly<Partial<Record<MainSize, readonly TeeSize[]>>> = {
  '1-1/4': ['3/4'],
  '1-1/2': ['3/4', '1'],
};

const oneSizeKinds = kitKinds.filter((kind) => sizedBy[kind] === 'one');
/** The service is of a tee's size too, so its cap is stamped like the tee's pieces. */
const teeSizedKinds = kitKinds.filter((kind) => sizedBy[kind] === 'tee' || sizedBy[kind] === 'service');

/** Pieces of the tee's own size, and how many of each, that the whole job uses. The second closing plug is the spare. */
const neededOfTeeSize: Readonly<Partial<Record<KitKind, number>>> = {
  seatRing: 1,
  socket: 1,
  boreStopper: 1,
  keeperPlug: 1,
  cupGasket: 1,
  splitCollar: 1,
  closingPlug: 2,
};

const neededOfOneSize: Readonly<Partial<Record<KitKind, number>>> = {
  saddle: 1,
  chain: 2,
  isolationValve: 1,
  lowerSpool: 1,
  upperSpool: 1,
  sightCap: 1,
  testHead: 1,
  rodBarrel: 1,
  stopperHolder: 1,
  depthCollar: 1,
  valveCap: 1,
  gaugeRing: 1,
};

/** What only the whole document can show: pairing, kit, weights, ranges. */
export function crossProblems(scenario: Scenario): Problem[] {
  return [
    ...pairing(scenario),
    ...kitEntries(scenario.job.kit),
    ...kitEnough(withStartingFaults(scenario)),
    ...ranges(scenario),
    ...mainFeed(scenario.job),
    ...points(scenario),
    ...prelude(scenario),
    ...faultProblems(scenario),
    ...drill(scenario),
    ...renewal(scenario),
  ];
}

/** Pieces of a renewal, and how many of each; two caps where an old end stays capped beside the new line's. */
const neededToRenew: readonly KitKind[] = ['renewalTee', 'newTopPlug', 'tieIn', 'testSet', 'purgeRiser'];

/** What the work is and what the job is laid out for must be one. */
function renewal({ work, job, limits, intendedEnding }: Scenario): Problem[] {
  if (workOf(job) !== work) {
    const says = `The work is ${work}; the job is laid out to ${workOf(job)}.`;
    return [{ where: work === 'abandon' ? 'job.system.renewal' : 'work', says }];
  }
  if (work === 'abandon') return [];
  const problems: Problem[] = [];
  if (limits.renewal === undefined)
    problems.push({ where: 'limits.renewal', says: 'A renewal needs limits of its own.' });
  if (intendedEnding !== 'complete') return problems;
  const have = (kind: KitKind): number => job.kit.filter((k) => k.kind === kind).length;
  for (const kind of neededToRenew)
    if (have(kind) === 0)
      problems.push({ where: 'job.kit', says: `A renewal needs a ${kind}; the kit has none.` });
  if (work === 'renew' && have('serviceCap') < 2)
    problems.push({ where: 'job.kit', says: 'A renewal needs 2 serviceCap: old end and new line.' });
  return problems;
}

function drill({ kind, drill: part }: Scenario): Problem[] {
  if (kind === 'drill' && part === undefined)
    return [{ where: 'drill', says: 'A drill says from which stage to which it goes.' }];
  if (kind === 'job' && part !== undefined)
    return [{ where: 'drill', says: 'Only a drill is a part of a job.' }];
  return part !== undefined && stages.indexOf(part.from) > stages.indexOf(part.to)
    ? [{ where: 'drill.to', says: `Stage ${part.to} comes before ${part.from}.` }]
    : [];
}

function prelude({ prelude: done }: Scenario): Problem[] {
  return done.flatMap(({ atS }, i) =>
    i > 0 && atS < done[i - 1].atS
      ? [{ where: `prelude[${i}].atS`, says: 'The action is earlier than the one before it.' }]
      : [],
  );
}

function pairing({ job }: Scenario): Problem[] {
  const { mainNps, teeSize } = job.workpiece;
  const takes = teesOnSmallMains[mainNps];
  if (!takes || takes.includes(teeSize)) return [];
  const says = `An NPS ${mainNps} main has no room for the coupling of an NPS ${teeSize} tee; it takes ${takes.join(' and ')}.`;
  return [{ where: 'job.workpiece.teeSize', says }];
}

function kitEntries(kit: readonly KitEntry[]): Problem[] {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  kit.forEach((entry, i) => {
    const where = `job.kit[${i}]`;
    if (seen.has(entry.id))
      problems.push({ where: `${where}.id`, says: `Two pieces are called ${entry.id}.` });
    seen.add(entry.id);
    if (oneSizeKinds.includes(entry.kind)) {
      if (entry.stamped !== undefined)
        problems.push({
          where: `${where}.stamped`,
          says: `A ${entry.kind} is made in one size and carries no stamp.`,
        });
    } else problems.push(...stampOf(entry, where));
    if (entry.trueSize !== undefined && entry.stamped === undefined)
      problems.push({ where: `${where}.trueSize`, says: 'A real size needs a stamp that it differs from.' });
  });
  return problems;
}

function stampOf(entry: KitEntry, where: string): Problem[] {
  if (entry.stamped === undefined)
    return [{ where: `${where}.stamped`, says: `A ${entry.kind} is stamped with its size.` }];
  const sizes: readonly string[] = teeSizedKinds.includes(entry.kind) ? ['3/4', '1', '1-1/4'] : cradleMains;
  const wrong = (size: string | undefined) => size !== undefined && !sizes.includes(size);
  const says = `A ${entry.kind} is made in ${sizes.join(', ')} only.`;
  if (wrong(entry.stamped)) return [{ where: `${where}.stamped`, says }];
  return wrong(entry.trueSize) ? [{ where: `${where}.trueSize`, says }] : [];
}

function kitEnough({ job, intendedEnding }: Scenario): Problem[] {
  const { mainNps, teeSize } = job.workpiece;
  const problems: Problem[] = [];
  const need = (kind: KitKind, size: string | null, count: number) => {
    const have = job.kit.filter(
      (k) => k.kind === kind && (size === null || (k.trueSize ?? k.stamped) === size),
    ).length;
    if (have >= count) return;
    const which = size === null ? '' : ` of size ${size}`;
    problems.push({ where: 'job.kit', says: `The job needs ${count} ${kind}${which}; the kit has ${have}.` });
  };
  for (const kind of oneSizeKinds) need(kind, null, neededOfOneSize[kind] ?? 0);
  if (intendedEnding !== 'complete') return problems;
  for (const kind of teeSizedKinds) need(kind, teeSize, neededOfTeeSize[kind] ?? 0);
  need('serviceCap', job.system.service.nps, 1);
  if (cradleMains.includes(mainNps)) need('cradleBlock', mainNps, 2);
  return problems;
}

function ranges(scenario: Scenario): Problem[] {
  const problems: Problem[] = [];
  const { limits, job } = scenario;
  const ordered: [string, readonly [number, number]][] = [
    ['limits.lowStageGaugePa', limits.lowStageGaugePa],
    ['limits.stopperBelowPortM', limits.stopperBelowPortM],
    ['limits.stopperFirmNm', limits.stopperFirmNm],
    ['limits.keeperGapM', limits.keeperGapM],
    ['limits.closingPastHandTurns', limits.closingPastHandTurns],
    ['limits.closingNm', limits.closingNm],
    ['limits.oxygenShare', limits.oxygenShare],
    ['job.site.alarms', job.site.alarms],
  ];
  for (const [where, [low, high]] of ordered)
    if (low >= high)
      problems.push({ where, says: `The first of the two, ${low}, must be less than the second, ${high}.` });
  return problems;
}

/** A schedule runs forward in time; a regulator can only feed what stands below it. */
function mainFeed({ system: { main } }: Job): Problem[] {
  const problems: Problem[] = [];
  if (main?.by === 'schedule') {
    let afterS = 0;
    main.points.forEach(({ atS }, i) => {
      if (atS <= afterS)
        problems.push({
          where: `job.system.main.points[${i}].atS`,
          says: `The points of a schedule follow one another in time: ${atS} s is not after ${afterS} s.`,
        });
      afterS = Math.max(afterS, atS);
    });
  }
  if (main?.by === 'regulator' && main.inletGaugePa <= main.setGaugePa)
    problems.push({
      where: 'job.system.main.inletGaugePa',
      says: `The pressure before the regulator, ${main.inletGaugePa} Pa, must be above its setting, ${main.setGaugePa} Pa.`,
    });
  return problems;
}

function points(scenario: Scenario): Problem[] {
  const problems: Problem[] = [];
  const sum = Object.values(scenario.weights).reduce((total, weight) => total + weight, 0);
  if (Math.abs(sum - 100) > 1e-9)
    problems.push({
      where: 'weights',
      says: `The weights of the five headings must sum to 100; they sum to ${sum}.`,
    });
  const ids = scenario.holdPoints.map((h) => h.id);
  ids.forEach((id, i) => {
    if (ids.indexOf(id) < i)
      problems.push({ where: `holdPoints[${i}].id`, says: `Hold point ${id} is listed twice.` });
  });
  const weight = scenario.holdPoints.reduce((total, h) => total + h.weight, 0);
  if (weight <= 0) problems.push({ where: 'holdPoints', says: 'At least one hold point must carry weight.' });
  return problems;
}
