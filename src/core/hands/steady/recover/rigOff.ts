import { attemptTo, StopWork, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';
import { topKind } from '../../seen.ts';
import { headOffOpen } from '../proof.ts';
import { letGo } from '../seating.ts';
import { easeOpen } from '../valveAndBleed.ts';

/**
 * While the plug has never been out, the nearest safe state is the snugged plug with nothing over it: what stands in
 * the rig is the crew's own air, let out before the chains are. A rig that does not come off so stays on, shut in.
 */
export function* rigOffUnopened(crew: Crew): Work {
  const { saddleOn, plug, keeper, stack } = crew.view.rig;
  const top = topKind(crew.view.rig);
  if (saddleOn !== 'tee' || plug.at !== 'tee' || keeper !== 'board') return;
  if (stack.length > 0 && top !== 'testHead' && top !== null) return;
  try {
    if (top === 'testHead') yield* headOffOpen(crew);
    if (crew.view.rig.stack.length > 0 && crew.view.rig.valveOpenRad === 0) yield* easeOpen(crew);
    yield* downToTheTee(crew);
  } catch (stop) {
    if (!(stop instanceof StopWork)) throw stop;
  }
}

function* downToTheTee(crew: Crew): Work {
  for (const piece of [...crew.view.rig.stack].reverse())
    yield* attemptTo(crew, { kind: 'piece.remove', piece: piece.id, holdBack: true });
  if (crew.view.rig.chains.some(({ hooked }) => hooked)) yield* letGo(crew);
  for (const { id, kind, where } of crew.view.rig.pieces) {
    if (where === 'rig' && kind === 'saddle')
      yield* attemptTo(crew, { kind: 'piece.remove', piece: id, holdBack: true });
  }
}
