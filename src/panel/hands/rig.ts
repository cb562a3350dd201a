import { tell } from '../words/index.ts';
import { lastFact } from './felt.ts';
import type { Grip, Row, Rows } from './offer.ts';
import { legTurns, slackTurns, turnOffers } from './steps.ts';

const letters = ['A', 'B'] as const;

function tensionerRow({ run, units }: Grip, chain: 0 | 1, side: 'left' | 'right'): Row {
  const felt = lastFact(run.facts, 'tensioner.turned', (fact) => fact.chain === chain && fact.side === side);
  const action = (turns: number) => ({ kind: 'tensioner.turn', chain, side, turns }) as const;
  return {
    name: tell(`row.tensioner.${side}`, { letter: letters[chain] }),
    feels: felt === null ? undefined : tell('feels.torque', { torque: units.fingerTorque(felt.torqueNm) }),
    offers: [
      ...turnOffers(legTurns, 1, action, (turns) => tell('do.tighter', { turns })),
      ...turnOffers(slackTurns, -1, action, (turns) => tell('do.slacker', { turns })),
    ],
  };
}

/** Two chains, each hooked, drawn up at both sides, tapped flat. */
export const chainRows: Rows = (grip) =>
  ([0, 1] as const).flatMap((chain) => [
    {
      name: tell('row.chain', { letter: letters[chain] }),
      offers: [
        {
          name: tell('do.hook'),
          action: { kind: 'chain.hook', chain, hooked: true },
          done: grip.run.rig.chains[chain].hooked,
        } as const,
        { name: tell('do.unhook'), action: { kind: 'chain.hook', chain, hooked: false } } as const,
        { name: tell('do.tap'), action: { kind: 'chain.tap', chain } } as const,
      ],
    },
    tensionerRow(grip, chain, 'left'),
    tensionerRow(grip, chain, 'right'),
  ]);

const valve = (angleRad: number) => ({ kind: 'valve.turn', angleRad }) as const;
const quarter = Math.PI / 8;

export const valveRows: Rows = () => [
  {
    name: tell('row.valve.open'),
    offers: [
      { name: tell('do.ease'), action: valve(0.1) },
      { name: tell('do.quarterOfIt'), action: valve(quarter) },
      { name: tell('do.fully'), action: valve(Math.PI / 2) },
    ],
  },
  {
    name: tell('row.valve.shut'),
    offers: [
      { name: tell('do.ease'), action: valve(-0.1) },
      { name: tell('do.quarterOfIt'), action: valve(-quarter) },
      { name: tell('do.fully'), action: valve(-Math.PI / 2) },
    ],
  },
];

export const headRows: Rows = () => [
  {
    name: tell('row.pump'),
    offers: [
      { name: tell('do.stroke'), action: { kind: 'pump.stroke', strokes: 1 } },
      { name: tell('do.strokes', { n: 5 }), action: { kind: 'pump.stroke', strokes: 5 } },
      { name: tell('do.strokes', { n: 10 }), action: { kind: 'pump.stroke', strokes: 10 } },
    ],
  },
  {
    name: tell('row.vent'),
    offers: [
      { name: tell('do.crack'), action: { kind: 'vent.turn', open: 0.1 } },
      { name: tell('do.open'), action: { kind: 'vent.turn', open: 1 } },
      { name: tell('do.shut'), action: { kind: 'vent.turn', open: -1 } },
    ],
  },
];

export const bleedRows: Rows = ({ run }) => [
  {
    name: tell('row.bleed'),
    offers: [
      { name: tell('do.crack'), action: { kind: 'bleed.turn', angleRad: 0.2 } },
      { name: tell('do.open'), action: { kind: 'bleed.turn', angleRad: Math.PI / 2 } },
      { name: tell('do.shut'), action: { kind: 'bleed.turn', angleRad: -Math.PI / 2 } },
      { name: tell('do.clearBleed'), action: { kind: 'bleed.clear' } },
    ],
  },
  {
    name: tell('row.hose'),
    offers: [
      {
        name: tell('do.away'),
        action: { kind: 'hose.lead', outlet: 'away' },
        done: run.rig.hose === 'away',
      },
      {
        name: tell('do.inHole'),
        action: { kind: 'hose.lead', outlet: 'inHole' },
        done: run.rig.hose === 'inHole',
      },
    ],
  },
];

/** The split collar's two bolts. */
export const collarRows: Rows = () =>
  ([0, 1] as const).map((bolt) => {
    const action = (turns: number) => ({ kind: 'collarBolt.turn', bolt, turns }) as const;
    return {
      name: tell(bolt === 0 ? 'row.bolt.left' : 'row.bolt.right'),
      offers: [
        ...turnOffers([1 / 12, 1 / 4, 1], 1, action, (turns) => tell('do.tighter', { turns })),
        ...turnOffers([1 / 4, 1], -1, action, (turns) => tell('do.slacker', { turns })),
      ],
    };
  });
