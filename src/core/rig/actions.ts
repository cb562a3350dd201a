import * as v from 'valibot';
import { atMost } from '../units/index.ts';

/**
 * What a hand can do. An action names the smallest honest act: nothing here is refused for being out of order.
 * Signs: turns are positive clockwise seen from above (screwing in), lengths positive downward, angles positive opening.
 */

export const siteTasks = [
  'readOrder',
  'traceAtMain',
  'traceAtMeter',
  'permit',
  'ignitionCleared',
  'extinguisher',
  'barricade',
  'ladder',
  'shoring',
  'callGasControl',
  'findShutoff',
  'shutCustomer',
  'tagCustomer',
  'checkFarFeed',
  'bringRig',
  'bringSpares',
  'secondPerson',
  'supportPipe',
  'ventilate',
  'pumpOutWater',
  'clearPublic',
  'measureVolts',
  'openMeterStop',
  'retrieveByLine',
  'changeDetector',
  'changeGauge',
  'coat',
  'cover',
  'layService',
  'relightList',
  'relight',
] as const;
export type SiteTask = (typeof siteTasks)[number];

export const lookPlaces = [
  'boss',
  'coupling',
  'wall',
  'wrap',
  'downBore',
  'gasketSeat',
  'chains',
  'around',
  'hose',
] as const;
export type LookPlace = (typeof lookPlaces)[number];

export const leakPlaces = [
  'plug',
  'teeThread',
  'weld',
  'keeper',
  'seat',
  'valveJoint',
  'spoolJoint',
  'topJoint',
  'gland',
  'closingPlug',
  'cutEnd',
  'benchTee',
  'lineEnds',
  'tieIn',
  'newPlug',
] as const;
export type LeakPlace = (typeof leakPlaces)[number];

export const measures = ['stackHeight', 'seatToBoss', 'bossToPort', 'tipOffset'] as const;
export type Measure = (typeof measures)[number];

/** Two gauges on the main, the test head's own, a water column on the bleed for pressures too low for them, the test set's. */
export const gauges = ['main', 'second', 'head', 'manometer', 'test'] as const;
export type GaugeName = (typeof gauges)[number];
/** A ball turned less than this is shut as far as a crew can tell, rad (5°). */
export const SHUT_RAD = 0.0873;
/** A ball turned more than this leaves the bore full, rad (85°). */
export const OPEN_RAD = 1.4835;

export const detectorPlaces = ['hole', 'breathing', 'beside'] as const;
export type DetectorPlace = (typeof detectorPlaces)[number];
export const cleanPlaces = ['boss', 'pipe', 'coupling', 'bore', 'closingPlug', 'weldBead'] as const;
export type CleanPlace = (typeof cleanPlaces)[number];
export const oilPlaces = ['plug', 'tee'] as const;
export type OilPlace = (typeof oilPlaces)[number];
export const markPlaces = ['plug', 'tee', 'keeper', 'portLine'] as const;
export type MarkPlace = (typeof markPlaces)[number];
export const holdPointIds = [
  'H1',
  'H2',
  'H3',
  'H4',
  'H5',
  'H6',
  'H7',
  'H8',
  'H9',
  'H10',
  'H11',
  'R1',
  'R2',
  'R3',
  'R4',
  'R5',
  'R6',
  'H12',
] as const;
export type HoldPointId = (typeof holdPointIds)[number];
export const referReasons = [
  'pressureAboveRating',
  'bossBeyondUse',
  'wallUnsound',
  'suspectWrap',
  'wrongService',
  'outOfRange',
  'plugSeized',
  'proofFails',
  'stopFails',
  'valvePassing',
  'gasInHole',
  'weldLeaks',
  'threadWorn',
  'teeSeized',
  'strayVolts',
  'insertFound',
  'liquidInMain',
  'mainMoves',
  'kitUnfit',
  'siteUnsafe',
  'other',
] as const;
export type ReferReason = (typeof referReasons)[number];
export const recordFields = [
  'mainPressure',
  'proof1',
  'proof2',
  'leakTest',
  'disconnected',
  'purged',
  'sealed',
  'testMedium',
  'testDuration',
  'serviceTest',
  'serviceTestDuration',
  'gasPurge',
  'leaksFound',
  'abandonedFacility',
  'operator',
  'crew',
] as const;
export type RecordField = (typeof recordFields)[number];

const piece = v.pipe(v.string(), atMost(42));
const within = (low: number, high: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(low), v.maxValue(high));
const holdBack = v.boolean();
const index = (n: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(n - 1));

export const actionSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('site.do'), task: v.picklist(siteTasks) }),
  v.strictObject({ kind: v.literal('detector.bump') }),
  v.strictObject({ kind: v.literal('detector.read'), where: v.picklist(detectorPlaces) }),
  v.strictObject({ kind: v.literal('gauge.zero'), gauge: v.picklist(gauges) }),
  /** Read an instrument and write the figure down. */
  v.strictObject({ kind: v.literal('gauge.read'), gauge: v.picklist(gauges) }),
  v.strictObject({ kind: v.literal('look'), at: v.picklist(lookPlaces) }),
  /** Stand still and listen: at the bleed's hose and at the hole. */
  v.strictObject({ kind: v.literal('listen') }),
  v.strictObject({ kind: v.literal('measure'), what: v.picklist(measures) }),
  v.strictObject({ kind: v.literal('clean'), at: v.picklist(cleanPlaces) }),
  v.strictObject({ kind: v.literal('leakFluid.apply'), at: v.picklist(leakPlaces), watchS: within(1, 300) }),
  /** Penetrating oil on an old thread: it works while one waits. */
  v.strictObject({ kind: v.literal('oil.apply'), at: v.picklist(oilPlaces) }),
  v.strictObject({ kind: v.literal('mark'), at: v.picklist(markPlaces) }),
  v.strictObject({ kind: v.literal('piece.inspect'), piece }),
  v.strictObject({ kind: v.literal('piece.reject'), piece }),
  /** A piece on the board wiped: grit, oil, misplaced sealant and what blocks a bleed come off; damage stays. */
  v.strictObject({ kind: v.literal('piece.clean'), piece }),
  /** Put a piece where it belongs on the rig as it stands; threaded ones are made up with or without hold-back. */
  v.strictObject({ kind: v.literal('piece.place'), piece, holdBack }),
  v.strictObject({ kind: v.literal('piece.remove'), piece, holdBack }),
  v.strictObject({ kind: v.literal('chain.hook'), chain: index(2), hooked: v.boolean() }),
  v.strictObject({ kind: v.literal('chain.tap'), chain: index(2) }),
  v.strictObject({
    kind: v.literal('tensioner.turn'),
    chain: index(2),
    side: v.picklist(['left', 'right']),
    turns: within(-3, 3),
  }),
  v.strictObject({ kind: v.literal('valve.turn'), angleRad: within(-1.6, 1.6) }),
  /** Hand vent of the test head: change of opening, share of fully open. */
  v.strictObject({ kind: v.literal('vent.turn'), open: within(-1, 1) }),
  v.strictObject({
    kind: v.literal('pump.stroke'),
    strokes: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(10)),
  }),
  /** Bleed cock of the piece on top (rod barrel or sight cap). */
  v.strictObject({ kind: v.literal('bleed.turn'), angleRad: within(-1.6, 1.6) }),
  /** A wire through the bleed cock of the piece on top. */
  v.strictObject({ kind: v.literal('bleed.clear') }),
  v.strictObject({ kind: v.literal('hose.lead'), outlet: v.picklist(['inHole', 'away']) }),
  /** Fit a tip to the rod, or take it off (null); only while the barrel is off the stack. */
  v.strictObject({ kind: v.literal('rod.fit'), tip: v.nullable(piece) }),
  /** Put a piece into or onto the tip, or take it out (null); only while the barrel is off the stack. */
  v.strictObject({ kind: v.literal('rod.load'), piece: v.nullable(piece) }),
  v.strictObject({ kind: v.literal('rod.hold'), held: v.boolean() }),
  v.strictObject({ kind: v.literal('rod.move'), lengthM: within(-0.5, 0.5) }),
  v.strictObject({ kind: v.literal('rod.turn'), turns: within(-8, 8) }),
  v.strictObject({ kind: v.literal('innerRod.turn'), turns: within(-10, 10) }),
  /** Clamp the depth collar so that the rod stops at this travel, or free it (null). */
  v.strictObject({ kind: v.literal('collar.set'), travelM: v.nullable(within(0, 0.5)) }),
  v.strictObject({ kind: v.literal('plug.turn'), turns: within(-8, 8), holdBack }),
  v.strictObject({ kind: v.literal('tee.turn'), turns: within(-8, 8), holdBack }),
  /** Turn the keeper a little with a wrench from outside: to break its bite, and to snug it again. */
  v.strictObject({ kind: v.literal('keeper.turn'), turns: within(-1, 1), holdBack }),
  /** Pull on the keeper with a wrench from outside. */
  v.strictObject({ kind: v.literal('keeper.pull'), torqueNm: within(1, 400), holdBack }),
  v.strictObject({ kind: v.literal('sealant.apply'), piece }),
  v.strictObject({
    kind: v.literal('bond.clamp'),
    end: v.picklist(['tee', 'service']),
    clamped: v.boolean(),
  }),
  v.strictObject({ kind: v.literal('branch.cut'), part: v.picklist(['pilot', 'plugPilot', 'through']) }),
  v.strictObject({ kind: v.literal('tee.trim'), how: v.picklist(['saw', 'dress', 'file']) }),
  v.strictObject({ kind: v.literal('gaugeRing.try') }),
  v.strictObject({ kind: v.literal('service.purge') }),
  v.strictObject({ kind: v.literal('collarBolt.turn'), bolt: index(2), turns: within(-4, 4) }),
  /** Gauge and pump on their hose: to the renewal tee's bench cap, to the house end of the line, or off (null). */
  v.strictObject({ kind: v.literal('testSet.join'), to: v.nullable(v.picklist(['bench', 'line'])) }),
  v.strictObject({
    kind: v.literal('testSet.pump'),
    strokes: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(60)),
  }),
  v.strictObject({ kind: v.literal('testSet.vent'), open: within(-1, 1) }),
  /** Read the temperature of the line under test and write it down. */
  v.strictObject({ kind: v.literal('temperature.read') }),
  /** Cock of the purge riser: change of opening, share of fully open. */
  v.strictObject({ kind: v.literal('riser.turn'), open: within(-1, 1) }),
  /** Gas instrument held at the riser's outlet: share of gas. */
  v.strictObject({ kind: v.literal('riser.read') }),
  v.strictObject({
    kind: v.literal('record.write'),
    field: v.picklist(recordFields),
    value: v.pipe(v.string(), atMost(80)),
  }),
  v.strictObject({ kind: v.literal('sign'), holdPoint: v.picklist(holdPointIds) }),
  v.strictObject({ kind: v.literal('withdraw'), holdPoint: v.picklist(holdPointIds) }),
  /** Stop work and refer back, with the reason given. */
  v.strictObject({ kind: v.literal('refer'), reason: v.picklist(referReasons) }),
  v.strictObject({ kind: v.literal('main.isolate') }),
  /** Leave the hole, upwind, people first. */
  v.strictObject({ kind: v.literal('leaveHole') }),
  /** The work is done and the record closed. */
  v.strictObject({ kind: v.literal('finish') }),
]);

export type Action = v.InferOutput<typeof actionSchema>;
export type ActionKind = Action['kind'];
export const actionKinds: readonly ActionKind[] = actionSchema.options.map(
  (option) => option.entries.kind.literal,
);
