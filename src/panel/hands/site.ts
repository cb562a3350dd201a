import type { SiteTask } from '../../core/rig/index.ts';
import { recordFields, referReasons } from '../../session/index.ts';
import { tell, type WordKey } from '../words/index.ts';
import type { Row, Rows } from './offer.ts';

const groups: readonly (readonly [WordKey, readonly SiteTask[]])[] = [
  ['row.order', ['readOrder', 'permit', 'callGasControl', 'findShutoff', 'secondPerson']],
  ['row.customer', ['traceAtMain', 'traceAtMeter', 'shutCustomer', 'tagCustomer', 'checkFarFeed']],
  [
    'row.hole',
    [
      'ignitionCleared',
      'extinguisher',
      'barricade',
      'ladder',
      'shoring',
      'ventilate',
      'pumpOutWater',
      'clearPublic',
      'retrieveByLine',
    ],
  ],
  [
    'row.later',
    [
      'bringRig',
      'bringSpares',
      'supportPipe',
      'measureVolts',
      'openMeterStop',
      'changeDetector',
      'changeGauge',
      'coat',
      'cover',
    ],
  ],
  ['row.renewal', ['layService', 'relightList', 'relight']],
];

/** The site: who was asked, what was put ready. */
export const siteRows: Rows = ({ run, words }) =>
  groups.map(([name, tasks]) => ({
    name: tell(name),
    offers: tasks.map((task) => ({
      name: words.siteTasks[task].button,
      action: { kind: 'site.do', task },
      done: run.rig.site.done[task] !== undefined,
    })),
  }));

/** Fields of the record; what is written in them is typed beside the button. */
export const writtenFields = recordFields;

/** Ways to end, early or in good order. */
export const stopRows: Rows = ({ words }): Row[] => [
  {
    name: tell('row.emergency'),
    offers: [
      { name: tell('do.leave'), action: { kind: 'leaveHole' } },
      { name: tell('do.isolate'), action: { kind: 'main.isolate' }, sure: tell('sure.isolate') },
    ],
  },
  {
    name: tell('row.refer'),
    offers: referReasons.map((reason) => ({
      name: words.referReasons[reason],
      action: { kind: 'refer', reason },
      sure: tell('sure.refer'),
    })),
  },
  {
    name: tell('row.finish'),
    offers: [{ name: tell('do.finish'), action: { kind: 'finish' }, sure: tell('sure.finish') }],
  },
];
