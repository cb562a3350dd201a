import {
  cleanPlaces,
  detectorPlaces,
  gauges,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
} from '../../session/index.ts';
import { tell } from '../words/index.ts';
import { lastFact } from './felt.ts';
import { ruleFigure } from './rule.ts';
import type { Rows } from './offer.ts';

/** Gauges read and written down, the detector held somewhere. */
export const gaugeRows: Rows = ({ run, words }) => [
  ...gauges.map((gauge) => ({
    name: tell(`row.gauge.${gauge}`),
    offers: [
      {
        name: tell('do.zero'),
        action: { kind: 'gauge.zero', gauge },
        done: run.rig.site.zeroed[gauge],
      } as const,
      { name: tell('do.read'), action: { kind: 'gauge.read', gauge } } as const,
    ],
  })),
  {
    name: tell('row.detector'),
    offers: [
      { name: tell('do.bump'), action: { kind: 'detector.bump' }, done: run.rig.site.detectorBumped },
      ...detectorPlaces.map((where) => ({
        name: words.detectorPlaces[where],
        action: { kind: 'detector.read', where } as const,
      })),
    ],
  },
];

export const lookRows: Rows = ({ words }) => [
  {
    name: tell('row.look'),
    offers: lookPlaces.map((at) => ({ name: words.lookPlaces[at], action: { kind: 'look', at } })),
  },
  { name: tell('row.listen'), offers: [{ name: tell('do.listen'), action: { kind: 'listen' } }] },
];

export const leakRows: Rows = ({ words, watchS }) => [
  {
    name: tell('row.leak'),
    asks: 'watch',
    offers: leakPlaces.map((at) => ({
      name: words.leakPlaces[at],
      action: { kind: 'leakFluid.apply', at, watchS },
    })),
  },
];

export const cleanRows: Rows = ({ run, words }) => [
  {
    name: tell('row.clean'),
    offers: cleanPlaces.map((at) => ({
      name: words.cleanPlaces[at],
      action: { kind: 'clean', at },
      done: run.rig.site.cleaned[at],
    })),
  },
];

export const measureRows: Rows = ({ run, words, units }) => [
  {
    name: tell('row.measure'),
    offers: measures.map((what) => {
      const last = lastFact(run.facts, 'measured', (fact) => fact.what === what);
      const read = last === null ? '' : ` (${ruleFigure(last.readingM, units)})`;
      return {
        name: `${words.measures[what]}${read}`,
        action: { kind: 'measure', what },
        done: last !== null,
      };
    }),
  },
  {
    name: tell('row.mark'),
    offers: markPlaces.map((at) => ({
      name: words.markPlaces[at],
      action: { kind: 'mark', at },
      done: run.rig.site.marks[at] !== undefined,
    })),
  },
];
