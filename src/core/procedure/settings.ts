import * as v from 'valibot';
import { holdPointIds } from '../rig/index.ts';

/** What a scenario may set about hold points. Every limit is the operator's: none of these numbers is a federal rule. */
const n = (low: number, high: number) => v.pipe(v.number(), v.finite(), v.minValue(low), v.maxValue(high));
const range = (low: number, high: number) => v.strictTuple([n(low, high), n(low, high)]);

export const holdPointSchema = v.strictObject({
  id: v.picklist(holdPointIds),
  /** A false or missed signature here fails the run whatever the points. */
  critical: v.boolean(),
  weight: n(0, 100),
});
export type HoldPointSetting = v.InferOutput<typeof holdPointSchema>;

export const limitsSchema = v.strictObject({
  /** H1: readings within this share of the ordered pressure; second gauge within this of the first, Pa. */
  orderShare: n(0, 1),
  secondGaugePa: n(0, 1e5),
  /** Low stage of a proof, Pa gauge; most above the main's reading, Pa. */
  lowStageGaugePa: range(0, 1e5),
  overMainPa: n(0, 2e5),
  settleS: n(0, 3600),
  holdS: n(0, 36000),
  dropPa: n(0, 1e5),
  /** Seat test: reading within this of p(V−Vₐ)/V, Pa. */
  seatTestPa: n(0, 1e5),
  /** Vented and shut: this long, rise no more than this. */
  riseS: n(0, 3600),
  risePa: n(0, 1e5),
  proofAgeS: n(60, 86400),
  /** A puff on reopening the bleed is more than this, Pa gauge. */
  puffPa: n(0, 1e5),
  quietS: n(0, 3600),
  shutS: n(0, 3600),
  /** The bleed must hiss at least this share of the expected blow-down. */
  hissShare: n(0, 1),
  expectedHissS: n(0, 3600),
  stopAgeS: n(60, 86400),
  lookQuietS: n(0, 3600),
  stopperTiltRad: n(0, 1),
  stopperBelowPortM: range(0, 0.05),
  /** Squeeze of the bore stopper that is firm and does not tear it, by the kit's card, N·m. */
  stopperFirmNm: range(0, 50),
  keeperGapM: range(0, 0.05),
  keeperNm: n(0, 500),
  teeMovedTurns: n(0, 1),
  biteTurns: n(0, 1),
  noFlowS: n(0, 3600),
  closingPastHandTurns: range(0, 8),
  closingHandTurns: n(0, 8),
  closingNm: range(0, 500),
  leakWatchS: n(0, 3600),
  /** Leak fluid of a proof or a new joint: watched for less than this it shows nothing. */
  fluidWatchS: n(0, 300),
  /** A bleed over the shut valve stays shut this long before it is opened again to see whether the ball holds. */
  crackShutS: n(0, 3600),
  /** A dead service of less gas space than this is too small to need purging, m³. */
  smallServiceM3: n(0, 1),
  /** Work stops at this share of the lower explosive limit. */
  workLelShare: n(0, 1),
  oxygenShare: range(0, 1),
  tensionerEvenTurns: n(0, 3),
  /** What a renewal is held to; left out where the service is abandoned. */
  renewal: v.optional(
    v.strictObject({
      /** Turns past hand-tight and torque of the renewal tee in the coupling; its branch off the service's heading, rad. */
      pastHandTurns: range(0, 8),
      teeNm: range(0, 500),
      headingRad: n(0, 3.2),
      /** Test of the service alone: so long, s, and so much drop with the temperature taken out, Pa. */
      lineTestS: n(0, 86400),
      lineDropPa: n(0, 1e5),
      /** Purged once this share of gas has left the riser for so long, s. */
      purgeShare: n(0, 1),
      purgeS: n(0, 3600),
    }),
  ),
});

/** Taken where an exercise sets nothing of its own (all assumed). */
export const renewalLimits: NonNullable<v.InferOutput<typeof limitsSchema>['renewal']> = {
  pastHandTurns: [1.3, 2.4],
  teeNm: [20, 90],
  headingRad: 0.1745,
  lineTestS: 900,
  lineDropPa: 1800,
  purgeShare: 0.9,
  purgeS: 60,
};
export type Limits = v.InferOutput<typeof limitsSchema>;
