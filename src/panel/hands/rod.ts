import type { KitKind } from '../../core/rig/index.ts';
import { tell } from '../words/index.ts';
import { lastFact } from './felt.ts';
import type { Rows } from './offer.ts';
import { coarseTurns, turnOffers } from './steps.ts';

const move = (lengthM: number) => ({ kind: 'rod.move', lengthM }) as const;
const stepsM = [0.005, 0.025, 0.1] as const;

/** The rod in its barrel: held, pushed, turned. */
export const rodRows: Rows = ({ run, units }) => {
  const moved = lastFact(run.facts, 'rod.moved');
  const turned = lastFact(run.facts, 'rod.turned');
  const feltPush =
    moved === null ? undefined : tell('feels.push', { force: units.force(Math.abs(moved.feltN)) });
  const feltTurn =
    turned === null ? undefined : tell('feels.torque', { torque: units.torque(turned.torqueNm) });
  const turn = (turns: number) => ({ kind: 'rod.turn', turns }) as const;
  return [
    {
      name: tell('row.rod.hold'),
      offers: [
        { name: tell('do.hold'), action: { kind: 'rod.hold', held: true }, done: run.rig.rod.held },
        { name: tell('do.letGo'), action: { kind: 'rod.hold', held: false } },
      ],
    },
    {
      name: tell('row.tip'),
      offers: [
        { name: tell('do.unload'), action: { kind: 'rod.load', piece: null } },
        { name: tell('do.unfit'), action: { kind: 'rod.fit', tip: null } },
      ],
    },
    {
      name: tell('row.rod.down'),
      feels: feltPush,
      offers: [
        ...stepsM.map((stepM) => ({ name: units.length(stepM), action: move(stepM) })),
        { name: tell('do.untilStop'), action: move(0.5) },
      ],
    },
    {
      name: tell('row.rod.up'),
      offers: [
        ...stepsM.map((stepM) => ({ name: units.length(stepM), action: move(-stepM) })),
        { name: tell('do.untilStop'), action: move(-0.5) },
      ],
    },
    { name: tell('row.rod.in'), feels: feltTurn, offers: turnOffers(coarseTurns, 1, turn) },
    { name: tell('row.rod.back'), offers: turnOffers(coarseTurns, -1, turn) },
  ];
};

/** Squeezing the stopper by fingers on the inner rod. */
export const stopperRows: Rows = ({ run, units }) => {
  const felt = lastFact(run.facts, 'stopper.squeezed');
  const turn = (turns: number) => ({ kind: 'innerRod.turn', turns }) as const;
  return [
    {
      name: tell('row.inner.in'),
      feels: felt === null ? undefined : tell('feels.fingers', { torque: units.fingerTorque(felt.torqueNm) }),
      offers: turnOffers([1 / 12, 1 / 4, 1], 1, turn),
    },
    { name: tell('row.inner.back'), offers: turnOffers([1 / 4, 1, 4], -1, turn) },
  ];
};

/** Settings a torque wrench is clicked to, N·m. */
const wrenchNm = [60, 100, 135, 150, 180] as const;

export const keeperRows: Rows = ({ run, units, holdBack }) => {
  const felt = lastFact(run.facts, 'keeper.turned');
  return [
    {
      name: tell('row.keeper'),
      asks: 'holdBack',
      feels: felt === null ? undefined : tell('feels.torque', { torque: units.torque(felt.torqueNm) }),
      offers: wrenchNm.map((torqueNm) => ({
        name: tell('do.pullTo', { torque: units.torque(torqueNm) }),
        action: { kind: 'keeper.pull', torqueNm, holdBack },
      })),
    },
  ];
};

/** Kinds whose thread is dressed with sealant. */
const sealed: ReadonlySet<KitKind> = new Set(['closingPlug', 'renewalTee', 'newTopPlug', 'tieIn']);

/** Plugs that can be given sealant: those still on the board. */
export const closingRows: Rows = ({ run, voice }) => {
  const plugs = Object.values(run.rig.kit).filter((piece) => sealed.has(piece.kind));
  return [
    {
      name: tell('row.sealant'),
      offers: plugs.map((piece) => ({
        name: tell('do.sealantOn', { piece: voice.speech.piece(piece.id) }),
        action: { kind: 'sealant.apply', piece: piece.id },
        done: piece.sealant,
      })),
    },
  ];
};
