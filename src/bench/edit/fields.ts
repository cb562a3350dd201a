import type { SectionId } from '../address.ts';
import type { BenchKey } from '../words/en/index.ts';
import type { Quantity } from './quantity.ts';

type PathIn<Key> = Key extends `field.${infer Path}` ? Path : never;
/** Places of the document that have a label. */
export type FieldPath = PathIn<BenchKey>;

type Shape =
  | { readonly kind: 'number' | 'pair'; readonly quantity: Quantity }
  /** `words`: what each choice is called stands among the bench's words; else it is written as it is. */
  | { readonly kind: 'choice'; readonly words?: 'boss' | 'wrap' | 'ending' | 'feed' }
  | { readonly kind: 'yesNo' | 'text' | 'long' | 'lines' };

/** One entry of the document as a form asks for it. Bounds and choices come from the document's own schema. */
export type Field = Shape & {
  readonly path: FieldPath;
  readonly section: SectionId;
  /** What an empty field writes: null, or nothing at a place that then goes away. */
  readonly empty?: 'null' | { readonly removes: string };
  /** The part of the document that must be there for the field to be asked. */
  readonly within?: string;
};

const number = (section: SectionId, path: FieldPath, quantity: Quantity): Field => ({
  kind: 'number',
  section,
  path,
  quantity,
});
const pair = (section: SectionId, path: FieldPath, quantity: Quantity): Field => ({
  kind: 'pair',
  section,
  path,
  quantity,
});
const yesNo = (section: SectionId, path: FieldPath): Field => ({ kind: 'yesNo', section, path });

/** Every entry that is asked for by itself; kit, faults, hold points and a moving main have forms of their own. */
export const fields: readonly Field[] = [
  { kind: 'text', section: 'order', path: 'title' },
  { kind: 'long', section: 'order', path: 'brief' },
  { kind: 'text', section: 'order', path: 'workOrder.number' },
  { kind: 'text', section: 'order', path: 'workOrder.operator' },
  { kind: 'text', section: 'order', path: 'workOrder.address' },
  { kind: 'lines', section: 'order', path: 'workOrder.says' },

  { kind: 'choice', section: 'workpiece', path: 'job.workpiece.mainNps' },
  { kind: 'choice', section: 'workpiece', path: 'job.workpiece.teeSize' },
  { kind: 'choice', section: 'workpiece', path: 'job.workpiece.boss', words: 'boss' },
  { kind: 'choice', section: 'workpiece', path: 'job.workpiece.wrap', words: 'wrap' },
  yesNo('workpiece', 'job.workpiece.wallSound'),
  yesNo('workpiece', 'job.workpiece.boreScale'),
  number('workpiece', 'job.workpiece.scaleUnderChainsM', 'length'),
  number('workpiece', 'job.workpiece.plugBreakNm', 'torque'),
  number('workpiece', 'job.workpiece.teeBreakNm', 'torque'),
  number('workpiece', 'job.workpiece.plugLeakCdAM2', 'opening'),

  number('system', 'job.system.mainPressureGaugePa', 'gauge'),
  number('system', 'job.system.orderPressureGaugePa', 'gauge'),
  number('system', 'job.system.ratingGaugePa', 'gauge'),
  number('system', 'job.system.temperatureK', 'temperature'),
  { kind: 'choice', section: 'system', path: 'job.system.service.nps' },
  number('system', 'job.system.service.lengthM', 'distance'),
  yesNo('system', 'job.system.service.curbShut'),
  number('system', 'job.system.service.curbPassingCdAM2', 'opening'),
  number('system', 'job.system.service.beyondCurbGaugePa', 'gauge'),
  { ...number('system', 'job.system.renewal.lengthM', 'distance'), within: 'job.system.renewal' },
  { ...number('system', 'job.system.renewal.lineLeakCdAM2', 'opening'), within: 'job.system.renewal' },

  number('site', 'job.site.holeVolumeM3', 'volume'),
  number('site', 'job.site.holeDepthM', 'distance'),
  number('site', 'job.site.freshAirM3PerS', 'airFlow'),
  number('site', 'job.site.hoseDrawnBack', 'share'),
  yesNo('site', 'job.site.ignitionSource'),
  number('site', 'job.site.lelFraction', 'share'),
  pair('site', 'job.site.alarms', 'share'),

  number('limits', 'limits.orderShare', 'share'),
  number('limits', 'limits.secondGaugePa', 'difference'),
  number('limits', 'limits.workLelShare', 'share'),
  pair('limits', 'limits.oxygenShare', 'share'),
  pair('limits', 'limits.lowStageGaugePa', 'gauge'),
  number('limits', 'limits.overMainPa', 'difference'),
  number('limits', 'limits.settleS', 'seconds'),
  number('limits', 'limits.holdS', 'seconds'),
  number('limits', 'limits.dropPa', 'difference'),
  number('limits', 'limits.seatTestPa', 'difference'),
  number('limits', 'limits.fluidWatchS', 'seconds'),
  number('limits', 'limits.proofAgeS', 'minutes'),
  number('limits', 'limits.tensionerEvenTurns', 'turns'),
  number('limits', 'limits.lookQuietS', 'seconds'),
  number('limits', 'limits.crackShutS', 'seconds'),
  number('limits', 'limits.quietS', 'seconds'),
  number('limits', 'limits.shutS', 'seconds'),
  number('limits', 'limits.puffPa', 'difference'),
  number('limits', 'limits.riseS', 'seconds'),
  number('limits', 'limits.risePa', 'difference'),
  number('limits', 'limits.expectedHissS', 'seconds'),
  number('limits', 'limits.hissShare', 'share'),
  number('limits', 'limits.stopAgeS', 'minutes'),
  number('limits', 'limits.noFlowS', 'seconds'),
  number('limits', 'limits.smallServiceM3', 'litres'),
  number('limits', 'limits.stopperTiltRad', 'angle'),
  pair('limits', 'limits.stopperBelowPortM', 'length'),
  pair('limits', 'limits.stopperFirmNm', 'fingerTorque'),
  pair('limits', 'limits.keeperGapM', 'length'),
  number('limits', 'limits.keeperNm', 'torque'),
  number('limits', 'limits.biteTurns', 'turns'),
  number('limits', 'limits.teeMovedTurns', 'turns'),
  pair('limits', 'limits.closingPastHandTurns', 'turns'),
  number('limits', 'limits.closingHandTurns', 'turns'),
  pair('limits', 'limits.closingNm', 'torque'),
  number('limits', 'limits.leakWatchS', 'seconds'),
  { ...pair('limits', 'limits.renewal.pastHandTurns', 'turns'), within: 'limits.renewal' },
  { ...pair('limits', 'limits.renewal.teeNm', 'torque'), within: 'limits.renewal' },
  { ...number('limits', 'limits.renewal.headingRad', 'angle'), within: 'limits.renewal' },
  { ...number('limits', 'limits.renewal.lineTestS', 'seconds'), within: 'limits.renewal' },
  { ...number('limits', 'limits.renewal.lineDropPa', 'difference'), within: 'limits.renewal' },
  { ...number('limits', 'limits.renewal.purgeShare', 'share'), within: 'limits.renewal' },
  { ...number('limits', 'limits.renewal.purgeS', 'seconds'), within: 'limits.renewal' },

  number('scoring', 'weights.holdPoints', 'points'),
  number('scoring', 'weights.gasControl', 'points'),
  number('scoring', 'weights.technique', 'points'),
  number('scoring', 'weights.kit', 'points'),
  number('scoring', 'weights.abnormal', 'points'),
  number('scoring', 'cutScore', 'points'),
  { kind: 'choice', section: 'scoring', path: 'intendedEnding', words: 'ending' },
  { ...number('scoring', 'timeLimitS', 'minutes'), empty: 'null' },
  { ...number('scoring', 'coach.hintPoints', 'points'), empty: { removes: 'coach' } },
  number('scoring', 'seed', 'plain'),
];

/** The field whose place it is, or that it lies in; nothing where the place has a form of its own. */
export function fieldAt(path: string): Field | undefined {
  return fields.find((field) => path === field.path || path.startsWith(`${field.path}[`));
}

const sectionStarts: readonly (readonly [string, SectionId])[] = [
  ['faults', 'faults'],
  ['holdPoints', 'holdPoints'],
  ['limits', 'limits'],
  ['job.kit', 'kit'],
  ['job.workpiece', 'workpiece'],
  ['job.system', 'system'],
  ['job.site', 'site'],
  ['job', 'workpiece'],
  ['weights', 'scoring'],
  ['work', 'system'],
];

/** The part of the bench on which a place of the document is worked at. */
export function sectionOf(path: string): SectionId {
  return fieldAt(path)?.section ?? sectionStarts.find(([start]) => path.startsWith(start))?.[1] ?? 'order';
}
