import { SHUT_RAD } from '../../rig/index.ts';
import { kindOf, topOf } from '../../procedure/index.ts';
import type { Draft, Rule } from '../case.ts';

/** Pressure from which opening a joint throws what is taken off, Pa gauge (5 psi, assumed). */
const STRIKES_GAUGE_PA = 34474;
/** Kinds that close a space under pressure. */
const closing: ReadonlySet<string> = new Set([
  'testHead', 'rodBarrel', 'sightCap', 'valveCap', 'upperSpool', 'isolationValve', 'lowerSpool', 'saddle',
]); // prettier-ignore

/** Containment opened while gas stood behind it. */
export const openingRules: Rule = (judged) => [
  ...takenOff(judged),
  ...valveOnNothing(judged),
  ...threadsLetGo(judged),
  ...chainsLetGo(judged),
  ...bledIntoHole(judged),
];

const act = { release: 'act' } as const;

/** A piece taken off before it was bled: gas in the face, and past a few psi a blow from the piece. */
const takenOff: Rule = ({ facts, job, limits }) =>
  facts.flatMap((f): Draft[] => {
    if (f.fact !== 'piece.removed' || f.pressureGaugePa <= limits.puffPa) return [];
    if (!closing.has(kindOf(job, f.piece) ?? '')) return [];
    return [
      {
        id: 'openedUnderPressure',
        atS: f.atS,
        points: f.pressureGaugePa > STRIKES_GAUGE_PA ? 8 : 4,
        critical: f.pressureGaugePa > STRIKES_GAUGE_PA,
        numbers: { pressureGaugePa: f.pressureGaugePa, thrustN: f.thrustN, limitGaugePa: STRIKES_GAUGE_PA },
        items: [f.piece],
        causes: [`opened@${f.atS}`],
        ...act,
      },
    ];
  });

/** The valve opened on a live chamber with nothing above it. */
const valveOnNothing: Rule = ({ facts, stood, limits }) =>
  facts.flatMap((f, i): Draft[] => {
    if (f.fact !== 'valve.turned' || f.openRad <= SHUT_RAD || f.differenceGaugePa <= limits.puffPa) return [];
    const top = topOf(stood[i]);
    if (top !== 'isolationValve' && top !== 'upperSpool') return [];
    const before = i > 0 ? stood[i - 1].valveOpenRad : 0;
    if (before > SHUT_RAD) return [];
    return [
      {
        id: 'openedUnderPressure',
        atS: f.atS,
        points: 8,
        critical: f.differenceGaugePa > STRIKES_GAUGE_PA,
        numbers: { pressureGaugePa: f.differenceGaugePa, limitGaugePa: STRIKES_GAUGE_PA },
        causes: [`opened@${f.atS}`],
        ...act,
      },
    ];
  });

/** Plug or tee unscrewed in the open: nothing stands between the main and the hole. */
const threadsLetGo: Rule = ({ facts }) =>
  facts.flatMap((f): Draft[] => {
    if (f.fact === 'plug.free' && !f.chamberClosed) {
      const numbers = { differenceGaugePa: f.differenceGaugePa, thrustN: f.thrustN };
      return [
        {
          id: 'plugOutOpen',
          atS: f.atS,
          points: 12,
          critical: true,
          numbers,
          causes: [`free@${f.atS}`],
          ...act,
        },
      ];
    }
    if (f.fact === 'tee.free' && !f.chamberClosed) {
      const numbers = { thrustN: f.thrustN };
      return [
        {
          id: 'teeOutOpen',
          atS: f.atS,
          points: 12,
          critical: true,
          numbers,
          causes: [`free@${f.atS}`],
          ...act,
        },
      ];
    }
    return [];
  });

/** A chain let go under load: it whips, and the saddle lifts. */
const chainsLetGo: Rule = ({ facts, limits }) => {
  const found = facts.find((f) => f.fact === 'chain.released' && f.chamberGaugePa > limits.puffPa);
  if (found?.fact !== 'chain.released') return [];
  return [
    {
      id: 'chainLetGo',
      atS: found.atS,
      points: 5,
      critical: found.chamberGaugePa > STRIKES_GAUGE_PA,
      numbers: { chamberGaugePa: found.chamberGaugePa, forceN: found.forceN },
      causes: [`opened@${found.atS}`],
      ...act,
    },
  ];
};

/** The hose left in the hole: what the bleed lets go fills the air the crew stands in. */
const bledIntoHole: Rule = ({ openings, limits }) => {
  const inHole = openings.filter(
    (o) => o.top === 'rodBarrel' && !o.hoseAway && o.aboveGaugePa > limits.puffPa,
  );
  if (inHole.length === 0) return [];
  const numbers = { times: inHole.length, aboveGaugePa: inHole[0].aboveGaugePa };
  const atS = inHole[0].openedS;
  return [{ id: 'bledIntoHole', atS, points: 5, numbers, causes: ['hose'], ...act }];
};
