import * as v from 'valibot';
import { actionKinds } from '../rig/index.ts';
import { faultIds } from './ids.ts';

/** Moments of the job that can set a fault off, each told by a fact that the run raises. */
export const triggerConditions = [
  'plugFree',
  'boreStopped',
  'keeperIn',
  'serviceCut',
  'biteBroken',
  'saddleOnCoupling',
  'headAtMain',
  'teeFree',
  'couplingClosed',
] as const;
export type TriggerCondition = (typeof triggerConditions)[number];

export const triggerKinds = ['start', 'time', 'action', 'condition'] as const;
export type TriggerKind = (typeof triggerKinds)[number];

/** When a planted fault strikes: it is there from the start, or comes at a time, after the nth such action, or at a moment of the job. */
export const triggerSchema = v.variant('trigger', [
  v.strictObject({ trigger: v.literal('start') }),
  v.strictObject({
    trigger: v.literal('time'),
    atS: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(86400)),
  }),
  v.strictObject({
    trigger: v.literal('action'),
    action: v.picklist(actionKinds),
    /** Which one of that kind sets it off, counted from 1. */
    nth: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(99)),
  }),
  v.strictObject({ trigger: v.literal('condition'), condition: v.picklist(triggerConditions) }),
]);
export type Trigger = v.InferOutput<typeof triggerSchema>;

/** A fault as an exercise plants it. */
export const faultPlantedSchema = v.strictObject({
  fault: v.picklist(faultIds),
  /** How bad, in the fault's own unit; its usual severity where left out. */
  severity: v.optional(v.pipe(v.number(), v.finite())),
  /** The piece of kit it sits on, by id, where the fault sits on one. */
  on: v.optional(v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9-]{1,40}$/))),
  when: triggerSchema,
});
export type FaultPlanted = v.InferOutput<typeof faultPlantedSchema>;
