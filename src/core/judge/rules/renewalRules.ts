import { latest } from '../../procedure/index.ts';
import type { Draft, Rule } from '../case.ts';

/** A renewal: what the test's air, the drawn stopper and the unpurged line did. */
export const renewalRules: Rule = (judged) => [
  ...airOnStopper(judged),
  ...drawn(judged),
  ...relitUnpurged(judged),
];

/** Test air on a joined line stands on the stopper, and nothing but its own grip holds that from above. */
const airOnStopper: Rule = ({ facts }) => {
  const pumped = facts.flatMap((f) => (f.fact === 'testSet.pumped' && f.onStopper ? [f] : []));
  if (pumped.length === 0) return [];
  const worst = pumped.reduce((most, f) => (f.thrustN > most.thrustN ? f : most), pumped[0]);
  const dropped = latest(facts, 'stopper.dropped', (f) => f.atS >= pumped[0].atS) !== null;
  return [
    {
      id: 'testAirOnStopper',
      atS: pumped[0].atS,
      points: 6,
      critical: dropped,
      numbers: { thrustN: worst.thrustN, holdsN: worst.holdsN, gaugePa: worst.gaugePa },
      causes: ['R3.alone', 'stopperLost'],
    },
  ];
};

/** Drawn, or let fly, with the main's pressure still across it. */
const drawn: Rule = ({ facts, limits, run }) => {
  const newS = latest(facts, 'renewal.turned')?.atS;
  if (newS === undefined) return [];
  const pulled = facts.find((f) => f.fact === 'stopper.drawn' && f.differenceGaugePa > limits.puffPa);
  const flew = facts.find((f) => f.fact === 'stopper.slipped' && f.atS > newS && f.thrustN > 0);
  const first = pulled ?? flew;
  if (first === undefined || !('thrustN' in first)) return [];
  const differencePa = first.fact === 'stopper.drawn' ? first.differenceGaugePa : 0;
  const found: Draft = {
    id: 'drawnUnequalised',
    atS: first.atS,
    points: 5,
    critical: run.rig.ending?.kind === 'hurt',
    numbers: { thrustN: first.thrustN, differencePa },
    causes: ['drawn', 'stopperTorque'],
  };
  return [found];
};

/** Lit again with air in the line, whatever was signed. */
const relitUnpurged: Rule = ({ facts, limits }) => {
  const relit = latest(facts, 'site.done', (f) => f.task === 'relight');
  if (relit === null) return [];
  const read = latest(facts, 'riser.read', (f) => f.atS < relit.atS);
  const share = limits.renewal?.purgeShare ?? 0.9;
  const trueShare = read?.trueGasShare ?? 0;
  if (trueShare >= share - 0.02) return [];
  return [
    {
      id: 'airLeftInLine',
      atS: relit.atS,
      points: 6,
      critical: true,
      numbers: { gasShare: trueShare, limitShare: share },
      causes: ['R6.share', 'R6.continuous', 'R6'],
    },
  ];
};
