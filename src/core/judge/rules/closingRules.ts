import { kindOf } from '../../procedure/index.ts';
import type { Draft, Rule } from '../case.ts';

/** Closing the coupling: the valve capped while nothing else is on it, and the thread found before it is driven. */
export const closingRules: Rule = ({ facts, job, stood }) => {
  const found: Draft[] = [];
  const freeAt = facts.findIndex((f) => f.fact === 'tee.free');
  if (freeAt < 0) return [];
  const off = facts.findIndex(
    (f, i) => i > freeAt && f.fact === 'piece.removed' && kindOf(job, f.piece) === 'rodBarrel',
  );
  if (off >= 0 && stood[off].saddleOn === 'coupling') {
    const next = facts.find((f, i) => i > off && f.fact === 'piece.placed' && stackTop(kindOf(job, f.piece)));
    if (next?.fact === 'piece.placed' && kindOf(job, next.piece) !== 'valveCap') {
      found.push({ id: 'valveNotCapped', atS: next.atS, points: 0.5, causes: ['valveCap'] });
    }
  }
  const first = facts.find((f, i) => i > freeAt && f.fact === 'closing.turned' && f.engagedTurns > 0);
  if (!first) return found;
  const foundThread = facts.some(
    (f, i) => i > freeAt && f.atS < first.atS && f.fact === 'closing.turned' && f.engagedTurns === 0,
  );
  if (!foundThread)
    found.push({ id: 'threadNotFound', atS: first.atS, points: 2, causes: ['H11.notCrossed'] });
  return found;
};

function stackTop(kind: string | null): boolean {
  return kind === 'valveCap' || kind === 'sightCap' || kind === 'rodBarrel' || kind === 'testHead';
}
