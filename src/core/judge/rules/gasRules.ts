import type { Draft, Rule } from '../case.ts';
import { conditionsIn } from '../conditions.ts';
import { AIR_KG_PER_MOL, GAS_KG_PER_MOL } from '../ledger.ts';

/** Gas the rig's own parts bring into the hole at zero gauge when taken off, kg: about twice the 6 g of 76 mm parts. */
const PARTS_LEAVE_KG = 0.012;
/** A single puff beyond this was under pressure, kg. */
const PUFF_KG = 0.002;
/** Air that no proof brings into the main by itself, kg. */
const AIR_INTO_MAIN_KG = 0.02;

/**
 * Gas let go into the hole: air that burns, a crew that breathes it. Judged by what physics says happened, never by
 * how a step was done; gas through the bleed's hose is what the bleed is for.
 */
export const gasRules: Rule = (judged) => [
  ...(gaveWay(judged) ? [] : [...lost(judged), ...puff(judged)]),
  ...alarms(judged),
  ...flammable(judged),
  ...airIntoMain(judged),
];

const effect = { causes: ['release'], release: 'effect' } as const;

const lost: Rule = ({ run }) => {
  const toHoleKg = run.ledger.toHoleMol * GAS_KG_PER_MOL;
  const overKg = toHoleKg - PARTS_LEAVE_KG;
  if (overKg <= 0) return [];
  const points = Math.min(16, 2 + 80 * overKg);
  return [
    {
      id: 'gasToHole',
      atS: run.clockS,
      points,
      numbers: { toHoleKg, partsLeaveKg: PARTS_LEAVE_KG },
      ...effect,
    },
  ];
};

const puff: Rule = ({ run }) => {
  const puffKg = run.ledger.largestPuffMol * GAS_KG_PER_MOL;
  if (puffKg <= PUFF_KG) return [];
  return [{ id: 'largePuff', atS: run.clockS, points: 3, numbers: { puffKg, limitKg: PUFF_KG }, ...effect }];
};

/** What leaks by itself, or gives way under the crew's hands. */
const leaksOfItself: ReadonlySet<string> = new Set([
  'gasketBlows',
  'plugPassing',
  'weldLeaks',
  'weldWeepsAfterBite',
]);

/** Gas that came from such a leak, answered rightly, is none of the crew's letting go. */
const gaveWay = (judged: Parameters<Rule>[0]): boolean =>
  conditionsIn(judged).some(({ id, answered }) => answered && leaksOfItself.has(id));

/** Gas of another leak near by is none of the crew's letting go either. */
const fromElsewhere = (judged: Parameters<Rule>[0]): boolean =>
  gaveWay(judged) || conditionsIn(judged).some((condition) => condition.id === 'otherLeak');

const alarms: Rule = (judged) => {
  const { run, facts, job } = judged;
  if (fromElsewhere(judged)) return [];
  const { peakLelShare, overAlarmS } = run.air;
  const [low, high] = job.site.alarms;
  if (peakLelShare < low) return [];
  const step = peakLelShare >= high ? 2 : 1;
  const rang = facts.find((f) => f.fact === 'gas.alarm' && f.step === step);
  const numbers = { peakLelShare, alarmLelShare: step === 2 ? high : low, overAlarmS: overAlarmS[step - 1] };
  const base = { atS: rang?.atS ?? run.clockS, numbers, ...effect };
  return [step === 2 ? { id: 'highAlarm', points: 6, ...base } : { id: 'lowAlarm', points: 3, ...base }];
};

const flammable: Rule = (judged) => {
  const { run, facts, job } = judged;
  const found: Draft[] = [];
  const burning = facts.find((f) => f.fact === 'gas.ignited');
  if (burning?.fact === 'gas.ignited') {
    const numbers = { lelShare: burning.lelShare };
    found.push({
      id: 'gasIgnited',
      atS: burning.atS,
      points: 20,
      critical: true,
      numbers,
      causes: ['ignition'],
    });
  }
  const ready = facts.find((f) => f.fact === 'gas.flammable');
  if (ready?.fact !== 'gas.flammable') return found;
  const numbers = { lelShare: ready.lelShare, nearReachM: ready.nearReachM };
  if (job.site.ignitionSource && !cleared(facts, ready.atS)) {
    found.push({
      id: 'flammableAtSource',
      atS: ready.atS,
      points: 20,
      critical: true,
      numbers,
      causes: ['ignition'],
    });
  } else if (run.air.peakLelShare >= 1 && !gaveWay(judged)) {
    found.push({ id: 'flammableHole', atS: ready.atS, points: 12, numbers, ...effect });
  }
  return found;
};

function cleared(facts: Parameters<Rule>[0]['facts'], beforeS: number): boolean {
  return facts.some((f) => f.fact === 'site.done' && f.task === 'ignitionCleared' && f.atS <= beforeS);
}

const airIntoMain: Rule = ({ run }) => {
  const airKg = run.ledger.airIntoMainMol * AIR_KG_PER_MOL;
  if (airKg <= AIR_INTO_MAIN_KG) return [];
  const numbers = { airKg, limitKg: AIR_INTO_MAIN_KG };
  return [{ id: 'airIntoMain', atS: run.clockS, points: 2, numbers, causes: ['airIntoMain'] }];
};
