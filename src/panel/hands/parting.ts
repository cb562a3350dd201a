import { tell } from '../words/index.ts';
import { lastFact } from './felt.ts';
import type { Rows } from './offer.ts';
import { fineTurns, turnOffers } from './steps.ts';

/** The top plug by wrench from outside. */
export const plugRows: Rows = ({ run, units, holdBack }) => {
  const felt = lastFact(run.facts, 'plug.turned');
  const feels = felt === null ? undefined : tell('feels.torque', { torque: units.torque(felt.torqueNm) });
  const turn = (turns: number) => ({ kind: 'plug.turn', turns, holdBack }) as const;
  return [
    { name: tell('row.plug.back'), asks: 'holdBack', feels, offers: turnOffers(fineTurns, -1, turn) },
    { name: tell('row.plug.in'), offers: turnOffers(fineTurns, 1, turn) },
    { name: tell('row.oil'), offers: [{ name: tell('do.oil'), action: { kind: 'oil.apply', at: 'plug' } }] },
  ];
};

/** The tee by wrench, its trimming, and the ring that says whether it will come up. */
export const teeRows: Rows = ({ run, units, holdBack }) => {
  const felt = lastFact(run.facts, 'tee.turned');
  const feels = felt === null ? undefined : tell('feels.torque', { torque: units.torque(felt.torqueNm) });
  const turn = (turns: number) => ({ kind: 'tee.turn', turns, holdBack }) as const;
  return [
    {
      name: tell('row.trim'),
      offers: [
        {
          name: tell('do.saw'),
          action: { kind: 'tee.trim', how: 'saw' },
          done: run.rig.tee.trim !== 'whole',
        },
        {
          name: tell('do.dress'),
          action: { kind: 'tee.trim', how: 'dress' },
          done: run.rig.tee.trim === 'dressed',
        },
        { name: tell('do.file'), action: { kind: 'tee.trim', how: 'file' }, done: run.rig.tee.filed },
      ],
    },
    { name: tell('row.ring'), offers: [{ name: tell('do.tryRing'), action: { kind: 'gaugeRing.try' } }] },
    { name: tell('row.tee.back'), asks: 'holdBack', feels, offers: turnOffers(fineTurns, -1, turn) },
    { name: tell('row.tee.in'), offers: turnOffers(fineTurns, 1, turn) },
    { name: tell('row.oil'), offers: [{ name: tell('do.oil'), action: { kind: 'oil.apply', at: 'tee' } }] },
  ];
};

/** The branch: bonded, cut, purged, capped. */
export const branchRows: Rows = ({ run }) => [
  ...(['tee', 'service'] as const).map((end) => ({
    name: tell(`row.bond.${end}`),
    offers: [
      {
        name: tell('do.clamp'),
        action: { kind: 'bond.clamp', end, clamped: true },
        done: run.rig.site.bonded[end],
      } as const,
      { name: tell('do.unclamp'), action: { kind: 'bond.clamp', end, clamped: false } } as const,
    ],
  })),
  {
    name: tell('row.cut'),
    offers: [
      {
        name: tell('do.pilot'),
        action: { kind: 'branch.cut', part: 'pilot' },
        done: run.rig.branch.cut !== 'whole',
      },
      {
        name: tell('do.plugPilot'),
        action: { kind: 'branch.cut', part: 'plugPilot' },
        done: run.rig.branch.pilotPlugged,
      },
      {
        name: tell('do.through'),
        action: { kind: 'branch.cut', part: 'through' },
        done: run.rig.branch.cut === 'through',
      },
    ],
  },
  {
    name: tell('row.service'),
    offers: [{ name: tell('do.purge'), action: { kind: 'service.purge' }, done: run.rig.branch.purged }],
  },
];
