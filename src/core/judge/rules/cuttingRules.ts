import { evidence, kindOf, latest } from '../../procedure/index.ts';
import type { Case, Draft, Rule } from '../case.ts';

/** Turned back to within this of where it stood counts as snug, turns. */
const SNUG_TURNS = 0.02;

/** Parting the service and getting the tee ready to come: order and care from the first cut to the second saddle. */
export const cuttingRules: Rule = (judged) => [
  ...cutUnproved(judged),
  ...unsupported(judged),
  ...edges(judged),
  ...teeReady(judged),
];

/** The saw on a service that nothing has shown to be stopped. */
const cutUnproved: Rule = ({ facts, limits, job, holds }) => {
  const cut = facts.findIndex((f) => f.fact === 'branch.cut');
  if (cut < 0) return [];
  const fact = facts[cut];
  const leftAt = facts.findIndex((f) => f.fact === 'stopper.left');
  const proved = leftAt >= 0 && leftAt < cut && evidence('H4', facts.slice(0, leftAt), limits, job).met;
  const signed = holds.find((hold) => hold.id === 'H4');
  if (proved || !signed || fact.fact !== 'branch.cut') return [];
  const numbers = { pressureGaugePa: fact.pressureGaugePa };
  return [
    {
      id: 'cutStopUnproved',
      atS: fact.atS,
      points: 5,
      critical: true,
      holdPoint: 'H4',
      numbers,
      causes: ['H4'],
    },
  ];
};

const unsupported: Rule = ({ facts }) => {
  const cut = facts.find((f) => f.fact === 'branch.cut' && f.part === 'through');
  if (!cut) return [];
  const supported = facts.some((f) => f.fact === 'site.done' && f.task === 'supportPipe' && f.atS <= cut.atS);
  return supported ? [] : [{ id: 'pipeUnsupported', atS: cut.atS, points: 1, causes: ['supportPipe'] }];
};

/** A burr cuts the cup gasket as it goes over. */
const edges: Rule = ({ facts, job }) => {
  const gasket = facts.find((f) => f.fact === 'piece.placed' && kindOf(job, f.piece) === 'cupGasket');
  if (!gasket) return [];
  const filed = facts.some(
    (f) =>
      f.fact === 'done' && f.action.kind === 'tee.trim' && f.action.how === 'file' && f.atS <= gasket.atS,
  );
  return filed ? [] : [{ id: 'edgesNotFiled', atS: gasket.atS, points: 0.5, causes: ['edges'] }];
};

/** Before the second saddle hides it: the tee snugged again, weld and thread looked at, collar bolts even. */
const teeReady: Rule = ({ facts, stood, limits }) => {
  const saddle = facts.findIndex((f, i) => f.fact === 'piece.placed' && stood[i].saddleOn === 'coupling');
  if (saddle < 0) return [];
  const before = facts.slice(0, saddle);
  const atS = facts[saddle].atS;
  const found: Draft[] = [];
  const turnsBack = latest(before, 'tee.turned')?.turnsBack ?? 0;
  if (turnsBack > SNUG_TURNS) {
    found.push({ id: 'teeNotSnugged', atS, points: 2, numbers: { turnsBack }, causes: ['teeSnug'] });
  }
  const items = (['teeThread', 'weld'] as const).filter((place) => !lookedSinceBite(before, place));
  if (items.length > 0)
    found.push({ id: 'couplingUnchecked', atS, points: 1, items, causes: ['couplingLook'] });
  const bolts = latest(before, 'collarBolt.turned')?.bolts ?? [0, 0];
  const apartTurns = Math.abs(bolts[0] - bolts[1]);
  if (apartTurns > limits.tensionerEvenTurns + 1e-9) {
    const numbers = { apartTurns, limitTurns: limits.tensionerEvenTurns };
    found.push({ id: 'boltsUneven', atS, points: 1, numbers, causes: ['H8.gasket'] });
  }
  return found;
};

/** Leak fluid there since the tee's bite was first broken. */
function lookedSinceBite(facts: Case['facts'], place: 'teeThread' | 'weld'): boolean {
  const biteS = facts.find((f) => f.fact === 'tee.turned' && f.turnsBack > 0)?.atS ?? 0;
  return facts.some((f) => f.fact === 'leak.looked' && f.at === place && f.atS >= biteS);
}
