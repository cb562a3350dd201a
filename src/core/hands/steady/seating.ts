import { cradleMains } from '../../rig/index.ts';
import { act, lastOf, put, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

/** One pull of the tensioner's wrench, turns, and a short one once the chains are firm. */
const PULL_TURNS = 1 / 12;
const SHORT_TURNS = 1 / 24;
/** What a leg feels like when it is nearly firm and firm, N·m on the kit's own wrench. */
const NEARLY_NM = 1.4;
const FIRM_NM = 1.75;
/** Firm over the split collar: gas lifts there on the gasket's flange, four times the area of a seat ring. */
const FIRM_ON_COLLAR_NM = 3.4;
/** Most pulls on one leg before something must be wrong with the chain. */
const PULLS_MOST = 14;

const legs = [
  { chain: 0, side: 'left' },
  { chain: 0, side: 'right' },
  { chain: 1, side: 'left' },
  { chain: 1, side: 'right' },
] as const;

/** Saddle down, chains hooked, drawn up a little each side in turn, links tapped flat, drawn up again. */
export function* seatSaddle(crew: Crew, over: 'tee' | 'collar'): Work {
  const firmNm = over === 'tee' ? FIRM_NM : FIRM_ON_COLLAR_NM;
  yield* put(crew, 'saddle');
  yield* act(crew, { kind: 'chain.hook', chain: 0, hooked: true });
  yield* act(crew, { kind: 'chain.hook', chain: 1, hooked: true });
  yield* drawUp(crew, PULL_TURNS, NEARLY_NM);
  for (let tapped = 0; tapped < 2; tapped += 1) {
    yield* act(crew, { kind: 'chain.tap', chain: 0 });
    yield* act(crew, { kind: 'chain.tap', chain: 1 });
    yield* drawUp(crew, SHORT_TURNS, firmNm);
  }
  yield* act(crew, { kind: 'look', at: 'chains' });
}

/** Cradle blocks under a small main, one for each chain; none under a large one. */
export function* cradleMain(crew: Crew): Work {
  if (!cradleMains.includes(crew.order.mainNps)) return;
  yield* put(crew, 'cradleBlock', 0);
  yield* put(crew, 'cradleBlock', 1);
}

/** Hooked chains drawn up until every leg is firm, as the seat they hold asks. */
export function* drawUpChains(crew: Crew): Work {
  yield* drawUp(crew, PULL_TURNS, crew.view.rig.saddleOn === 'coupling' ? FIRM_ON_COLLAR_NM : FIRM_NM);
}

/** A seat that weeps: links tapped, and every leg a short pull on. */
export function* drawUpMore(crew: Crew): Work {
  yield* act(crew, { kind: 'chain.tap', chain: 0 });
  yield* act(crew, { kind: 'chain.tap', chain: 1 });
  for (const leg of legs) yield* act(crew, { kind: 'tensioner.turn', ...leg, turns: SHORT_TURNS });
  for (const leg of legs) yield* act(crew, { kind: 'tensioner.turn', ...leg, turns: SHORT_TURNS });
}

/** Rounds over all four legs, one pull each, until every leg feels so firm. */
function* drawUp(crew: Crew, turns: number, firmNm: number): Work {
  for (let pulls = 0; pulls < PULLS_MOST; pulls += 1) {
    let slackest = firmNm;
    for (const leg of legs) {
      const facts = yield* act(crew, { kind: 'tensioner.turn', ...leg, turns });
      slackest = Math.min(slackest, lastOf(facts, 'tensioner.turned')?.torqueNm ?? 0);
    }
    if (slackest >= firmNm) return;
  }
}

/** Slackens every leg in turn, a little first, and unhooks both chains. */
export function* letGo(crew: Crew): Work {
  for (const turns of [-PULL_TURNS, -3]) {
    for (const leg of legs) yield* act(crew, { kind: 'tensioner.turn', ...leg, turns });
  }
  yield* act(crew, { kind: 'chain.hook', chain: 0, hooked: false });
  yield* act(crew, { kind: 'chain.hook', chain: 1, hooked: false });
}
