import { tell } from '../words/index.ts';
import { lastFact } from './felt.ts';
import type { Rows } from './offer.ts';
import { fineTurns, turnOffers } from './steps.ts';

/** The keeper turned a little by two wrenches: its bite broken, and snugged again. */
export const keeperBiteRows: Rows = ({ holdBack }) => {
  const turn = (turns: number) => ({ kind: 'keeper.turn', turns, holdBack }) as const;
  return [
    { name: tell('row.keeper.back'), asks: 'holdBack', offers: turnOffers(fineTurns, -1, turn) },
    { name: tell('row.keeper.in'), offers: turnOffers(fineTurns, 1, turn) },
  ];
};

/** The test set on the bench and on the line: joined, pumped, vented, and the line's temperature. */
export const testSetRows: Rows = ({ run, units }) => {
  const read = lastFact(run.facts, 'temperature.read');
  return [
    {
      name: tell('row.testSet'),
      offers: [
        {
          name: tell('do.toBench'),
          action: { kind: 'testSet.join', to: 'bench' },
          done: run.rig.testSet.on === 'bench',
        },
        {
          name: tell('do.toLine'),
          action: { kind: 'testSet.join', to: 'line' },
          done: run.rig.testSet.on === 'line',
        },
        { name: tell('do.off'), action: { kind: 'testSet.join', to: null } },
      ],
    },
    {
      name: tell('row.testPump'),
      offers: [1, 10, 60].map((strokes) => ({
        name: strokes === 1 ? tell('do.stroke') : tell('do.strokes', { n: strokes }),
        action: { kind: 'testSet.pump', strokes },
      })),
    },
    {
      name: tell('row.testVent'),
      offers: [
        { name: tell('do.open'), action: { kind: 'testSet.vent', open: 1 } },
        { name: tell('do.shut'), action: { kind: 'testSet.vent', open: -1 } },
      ],
    },
    {
      name: tell('row.temperature'),
      feels: read === null ? undefined : units.temperature(read.readingK),
      offers: [{ name: tell('do.read'), action: { kind: 'temperature.read' } }],
    },
  ];
};

/** The purge riser: its cock, and what leaves it. */
export const riserRows: Rows = ({ run, voice }) => {
  const last = lastFact(run.facts, 'riser.read');
  return [
    {
      name: tell('row.riser'),
      feels: last === null ? undefined : voice.fact(last),
      offers: [
        { name: tell('do.open'), action: { kind: 'riser.turn', open: 1 } },
        { name: tell('do.shut'), action: { kind: 'riser.turn', open: -1 } },
        { name: tell('do.read'), action: { kind: 'riser.read' } },
      ],
    },
  ];
};
