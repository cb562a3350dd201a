import { cradleMains } from '../../rig/index.ts';
import { QUARTER_RAD } from './onStack.ts';
import { fluid, lastS, look, offer, place, type DueView, type Offer } from './view.ts';

const BITE_TURNS = 1 / 12;
const SNUG_TURNS = 0.01;
/** Turns past snug of each tensioner, before and after the links are tapped. */
const DRAWN_TURNS = 0.4;
const DRAWN_AGAIN_TURNS = 0.55;
const sides = ['left', 'right'] as const;

/** Stage 2: seal on the tee. */
export function* sealingOnTee(view: DueView): Generator<Offer> {
  const { rig } = view;
  for (const at of ['boss', 'pipe', 'coupling'] as const) {
    if (!rig.site.cleaned[at]) yield offer('clean', { kind: 'clean', at });
  }
  yield* look(view, 'boss', lastS(view, 'cleaned'));
  if (rig.saddle.on === 'board' && rig.plug.at === 'tee') {
    if (rig.site.marks.plug === undefined) yield offer('mark', { kind: 'mark', at: 'plug' });
    if (!rig.plug.broken)
      yield offer('breakPlugBite', { kind: 'plug.turn', turns: -BITE_TURNS, holdBack: true });
    if (rig.plug.turnsBack > SNUG_TURNS) {
      yield offer('snugPlug', { kind: 'plug.turn', turns: Math.min(1, rig.plug.turnsBack), holdBack: true });
    }
    yield* fluid(view, 'plug', lastS(view, 'plug.turned'), 30);
    if (rig.seatRing.piece === null) yield* place(view, 'placePiece', 'seatRing');
  }
  if (rig.saddle.on === 'board') yield* place(view, 'placePiece', 'saddle');
  yield* chains(view);
  if (!rig.stack.some((p) => p.kind === 'isolationValve')) yield* place(view, 'placePiece', 'isolationValve');
  yield* workValve(view);
}

/** Chains hooked, drawn up evenly, tapped and drawn up again. */
export function* chains(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (cradleMains.includes(view.job.workpiece.mainNps) && rig.saddle.cradles.length < 2) {
    yield* place(view, 'placePiece', 'cradleBlock');
  }
  if (rig.chains.some((chain) => chain.piece === null)) yield* place(view, 'placePiece', 'chain');
  for (const [i, chain] of rig.chains.entries()) {
    if (!chain.hooked) yield offer('hookChain', { kind: 'chain.hook', chain: i, hooked: true });
  }
  yield* drawUp(view, DRAWN_TURNS);
  for (const [i, chain] of rig.chains.entries()) {
    if (chain.taps < 1) yield offer('tapChain', { kind: 'chain.tap', chain: i });
  }
  yield* drawUp(view, DRAWN_AGAIN_TURNS);
}

function* drawUp(view: DueView, turns: number): Generator<Offer> {
  let slackest: { readonly chain: number; readonly side: 'left' | 'right' } | null = null;
  let least = turns - 1e-6;
  for (const [chain, state] of view.rig.chains.entries()) {
    for (const side of sides) {
      if (state.hooked && state[side] < least) {
        least = state[side];
        slackest = { chain, side };
      }
    }
  }
  if (slackest) yield offer('drawUpChain', { kind: 'tensioner.turn', ...slackest, turns: BITE_TURNS });
}

/** The valve worked open and shut before anything is trusted to it. */
export function* workValve(view: DueView): Generator<Offer> {
  const onS = view.facts.reduce(
    (at, f) => (f.fact === 'piece.placed' && view.rig.kit[f.piece]?.kind === 'isolationValve' ? f.atS : at),
    0,
  );
  const turned = view.facts.flatMap((f) => (f.fact === 'valve.turned' && f.atS >= onS ? [f.openRad] : []));
  if (!turned.some((openRad) => openRad > 1.48))
    yield offer('workValve', { kind: 'valve.turn', angleRad: QUARTER_RAD });
  else if (turned.length < 2) yield offer('workValve', { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}
