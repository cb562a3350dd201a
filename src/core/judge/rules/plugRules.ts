import { kindOf } from '../../procedure/index.ts';
import type { Case, Draft, Rule } from '../case.ts';

/** Turned back to within this of where it stood counts as snug, turns. */
const SNUG_TURNS = 0.02;

/** The top plug before the rig hides it: its bite broken a little, marked, and snugged so that it proves nothing false. */
export const plugRules: Rule = (judged) => {
  const saddleAt = firstSaddle(judged);
  if (saddleAt === null) return [];
  const before = judged.facts.slice(0, saddleAt);
  const atS = judged.facts[saddleAt].atS;
  const turns = before.flatMap((f) => (f.fact === 'plug.turned' ? [f.turnsBack] : []));
  const looked = before.some((f) => f.fact === 'leak.looked' && f.at === 'plug');
  const marked = before.some((f) => f.fact === 'marked' && f.at === 'plug');
  const cracked = turns.some((turnsBack) => turnsBack > 0);
  const lastTurnsBack = turns[turns.length - 1] ?? 0;
  const found: Draft[] = [];
  if (!cracked) found.push({ id: 'plugNotCracked', atS, points: 1, causes: ['plugBite'] });
  else if (lastTurnsBack > SNUG_TURNS || !looked) {
    const numbers = { turnsBack: lastTurnsBack, looked: looked ? 1 : 0 };
    found.push({
      id: 'plugNotSnugged',
      atS,
      points: lastTurnsBack > SNUG_TURNS ? 2 : 0.5,
      numbers,
      causes: ['plugSnug'],
    });
  }
  if (cracked && !marked) found.push({ id: 'plugNotMarked', atS, points: 0.5, causes: ['plugMark'] });
  return found;
};

function firstSaddle({ facts, job }: Case): number | null {
  const index = facts.findIndex((f) => f.fact === 'piece.placed' && kindOf(job, f.piece) === 'saddle');
  return index < 0 ? null : index;
}
