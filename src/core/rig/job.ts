import * as v from 'valibot';
import { cradleSizes, pipes, requiredServiceTestGaugePa } from '../catalogue/index.ts';
import { circleM2 } from '../physics/index.ts';
import { troubleSchema } from './troubles.ts';
import { recordFields, type RecordField } from './actions.ts';

/**
 * The rig's part of an exercise document: the workpiece, the system behind it, the site and the kit.
 * SI units throughout; bounds are what the model stands for, not what an operator allows.
 */

const positive = (high: number) => v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(high));
const fraction = positive(1);

export const mainSizeSchema = v.picklist(['1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12']);
export const teeSizeSchema = v.picklist(['3/4', '1', '1-1/4']);

/** `sound` seals at 8 % squeeze, `pitted` at 15 %, `beyondUse` never: stop work and refer back. */
export const faceConditionSchema = v.picklist(['sound', 'pitted', 'beyondUse']);

export const workpieceSchema = v.strictObject({
  mainNps: mainSizeSchema,
  teeSize: teeSizeSchema,
  /** Condition of the boss once cleaned. */
  boss: faceConditionSchema,
  /** Loose scale under the chains that is crushed by the links, mm of travel a leg loses if not cleaned: m. */
  scaleUnderChainsM: positive(0.003),
  /** Loose scale lying in the lower bore, seen from above through the sight cap. */
  boreScale: v.boolean(),
  /** Torque that breaks the top plug's bite, N·m. */
  plugBreakNm: positive(600),
  /** Torque that breaks the tee's bite in the coupling, N·m. */
  teeBreakNm: positive(800),
  /** Effective opening of a leak past the undisturbed top plug, m². */
  plugLeakCdAM2: positive(1e-5),
  /** Old wrap on the main: `suspect` may hold asbestos and is a stop. */
  wrap: v.picklist(['coalTar', 'tape', 'bare', 'suspect']),
  wallSound: v.boolean(),
});

/** Time of a run, s. */
const atS = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(864000));

export const mainFeedSchema = v.variant('by', [
  v.strictObject({ by: v.literal('fixed') }),
  /** Straight from the pressure at the beginning to the first point, and from point to point; it stays at the last. */
  v.strictObject({
    by: v.literal('schedule'),
    points: v.pipe(
      v.array(v.strictObject({ atS, gaugePa: positive(1e6) })),
      v.minLength(1),
      v.maxLength(100),
    ),
  }),
  /** A length of main of its own, fed through a regulator and drawn on by the street. */
  v.strictObject({
    by: v.literal('regulator'),
    inletGaugePa: positive(1e7),
    /** Pressure at which the regulator shuts, Pa gauge, and how far below it wide open, Pa. */
    setGaugePa: positive(1e6),
    droopPa: v.pipe(positive(1e6), v.minValue(100)),
    wideOpenCdAM2: positive(1e-2),
    /** Effective opening past the shut regulator, m²: what it creeps by. */
    creepCdAM2: positive(1e-3),
    /** Effective opening to the atmosphere of all the street draws, m². */
    drawnCdAM2: positive(1e-2),
    /** Gas space between the regulator and the street's last valve, m³. */
    volumeM3: v.pipe(positive(1e4), v.minValue(0.1)),
  }),
]);

/** The service that leaves the renewal tee: a new line laid beside the old, or the old one disconnected for a while. */
export const renewalSchema = v.strictObject({
  line: v.picklist(['new', 'old']),
  /** Length of a new line, m; its size is the old service's. */
  lengthM: positive(200),
  /** Effective opening of a leak in the line's own joints, m². */
  lineLeakCdAM2: positive(1e-6),
});

export const systemSchema = v.strictObject({
  /** True pressure of the main at the beginning, Pa gauge; for good, unless `main` says how it moves. */
  mainPressureGaugePa: positive(1e6),
  main: v.optional(mainFeedSchema),
  /** Pressure the rig and the fittings are rated for, Pa gauge. */
  ratingGaugePa: positive(1e6),
  /** Pressure on the work order, Pa gauge. */
  orderPressureGaugePa: positive(1e6),
  temperatureK: v.pipe(v.number(), v.minValue(250), v.maxValue(320)),
  service: v.strictObject({
    nps: teeSizeSchema,
    lengthM: positive(200),
    /** The curb valve stands shut before the crew comes; their task is then to find it so and tag it. */
    curbShut: v.boolean(),
    /** Effective opening past the shut curb valve from a far feed, m² (0: dead end). */
    curbPassingCdAM2: positive(1e-4),
    /** Pressure beyond the curb valve, Pa gauge: 0 when the house is off. */
    beyondCurbGaugePa: positive(1e6),
  }),
  /** What the tee is renewed for; absent where the service is abandoned. */
  renewal: v.optional(renewalSchema),
});

export const siteSchema = v.strictObject({
  holeVolumeM3: positive(20),
  holeDepthM: positive(5),
  /** Fresh air that reaches the bottom of the hole, m³/s. */
  freshAirM3PerS: positive(1),
  /** Share of what leaves the hose outside the hole that is drawn back into it. */
  hoseDrawnBack: fraction,
  /** A spark, flame or running engine within reach of the hole. */
  ignitionSource: v.boolean(),
  /** Lower explosive limit taken as 100 %: mole fraction of gas in air (0.05 NFPA, 0.044 IEC). */
  lelFraction: v.pipe(v.number(), v.minValue(0.04), v.maxValue(0.06)),
  /** Alarm steps as a share of the lower explosive limit, low then high. */
  alarms: v.strictTuple([fraction, fraction]),
});

export const kitKinds = [
  'seatRing',
  'saddle',
  'cradleBlock',
  'chain',
  'isolationValve',
  'lowerSpool',
  'upperSpool',
  'sightCap',
  'testHead',
  'rodBarrel',
  'socket',
  'stopperHolder',
  'magnet',
  'depthCollar',
  'boreStopper',
  'keeperPlug',
  'cupGasket',
  'splitCollar',
  'closingPlug',
  'valveCap',
  'gaugeRing',
  'serviceCap',
  'renewalTee',
  'newTopPlug',
  'tieIn',
  'testSet',
  'purgeRiser',
] as const;
export type KitKind = (typeof kitKinds)[number];

/** What fixes the size of a kind of piece; `one` is made in one size only. */
export const sizedBy: Readonly<Record<KitKind, 'tee' | 'main' | 'service' | 'one'>> = {
  seatRing: 'tee',
  saddle: 'one',
  cradleBlock: 'main',
  chain: 'one',
  isolationValve: 'one',
  lowerSpool: 'one',
  upperSpool: 'one',
  sightCap: 'one',
  testHead: 'one',
  rodBarrel: 'one',
  socket: 'tee',
  stopperHolder: 'one',
  magnet: 'one',
  depthCollar: 'one',
  boreStopper: 'tee',
  keeperPlug: 'tee',
  cupGasket: 'tee',
  splitCollar: 'tee',
  closingPlug: 'tee',
  valveCap: 'one',
  gaugeRing: 'one',
  serviceCap: 'service',
  renewalTee: 'tee',
  newTopPlug: 'tee',
  tieIn: 'service',
  testSet: 'one',
  purgeRiser: 'one',
};

/** Kinds that stand on one another above the saddle. */
export const stackKinds = [
  'lowerSpool',
  'isolationValve',
  'upperSpool',
  'sightCap',
  'testHead',
  'rodBarrel',
  'valveCap',
] as const satisfies readonly KitKind[];
export type StackedKind = (typeof stackKinds)[number];

/** True of a kind that stands in the stack above the saddle. */
export function isStacked(kind: KitKind): kind is StackedKind {
  return (stackKinds as readonly KitKind[]).includes(kind);
}

/** Mains so small that the chains need cradle blocks to bear on, one a chain (common practice, no source). */
export const cradleMains: readonly string[] = cradleSizes;

/**
 * What is wrong with a piece, each in its own unit: effective openings in m², shares 0 to 1,
 * gauge offsets in Pa. Absent means sound.
 */
export const defectsSchema = v.strictObject({
  /** O-ring nicked: opening when it carries no pressure, m². */
  oRingNickCdAM2: v.optional(positive(1e-6)),
  /** Grit on a seat ring, m². */
  gritCdAM2: v.optional(positive(1e-6)),
  /** Isolation valve passing across its shut ball, m². */
  seatPassingCdAM2: v.optional(positive(1e-4)),
  glandWeepCdAM2: v.optional(positive(1e-6)),
  /** Stopper rubber worn: opening left when firm, m². */
  rubberWornCdAM2: v.optional(positive(1e-4)),
  /** Oil on the rubber: friction falls. */
  oily: v.optional(v.boolean()),
  /** Share of the bleed's opening that debris blocks. */
  bleedBlocked: v.optional(fraction),
  /** Gauge pointer sticks at this reading, Pa gauge. */
  gaugeStuckPa: v.optional(positive(1e6)),
  gaugeOffsetPa: v.optional(v.pipe(v.number(), v.minValue(-1e5), v.maxValue(1e5))),
  ventNotShuttingCdAM2: v.optional(positive(1e-6)),
  pumpCheckLeakCdAM2: v.optional(positive(1e-6)),
  crackedWindow: v.optional(v.boolean()),
  weakDetent: v.optional(v.boolean()),
  wrongThread: v.optional(v.boolean()),
  /** Torque the valve's handle asks for, N·m. */
  stiffNm: v.optional(positive(100)),
  /** Filings on the valve's seat: passing across its shut ball, m². */
  filingsCdAM2: v.optional(positive(1e-4)),
  /** Misplaced sealant on rubber: friction falls. */
  sealantSmeared: v.optional(v.boolean()),
  /** Cup gasket pinched, or blown through: opening when it carries no pressure, m². */
  pinchedCdAM2: v.optional(positive(1e-4)),
  /** A joint that was left, or has worked, loose: what it is made up with at most, N·m. */
  looseNm: v.optional(positive(100)),
  /** A socket's retaining spring is weak, so that a quick lift drops what hangs in it; or it jams on the head. */
  looseGrip: v.optional(v.boolean()),
  jams: v.optional(v.boolean()),
  /** A stopper's squeeze screw is stripped: it slips back once it is let go. */
  screwSlips: v.optional(v.boolean()),
  /** Keeper's stem too long or too short by so much, m. */
  stemLongM: v.optional(positive(0.03)),
  stemShortM: v.optional(positive(0.03)),
  /** A closing plug meets the bottom so many turns past hand-tight. */
  bottomsTurns: v.optional(positive(3)),
});
export type Defects = v.InferOutput<typeof defectsSchema>;

export const kitPieceSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9-]{1,40}$/)),
  kind: v.picklist(kitKinds),
  /** Size stamped on the piece, where it has one. */
  stamped: v.optional(mainOrTee()),
  /** Its real size when the stamp lies. */
  trueSize: v.optional(mainOrTee()),
  defects: v.optional(defectsSchema),
});
export type KitEntry = v.InferOutput<typeof kitPieceSchema>;

function mainOrTee() {
  return v.picklist(['3/4', '1', '1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12']);
}

export const jobSchema = v.strictObject({
  workpiece: workpieceSchema,
  system: systemSchema,
  site: siteSchema,
  kit: v.pipe(v.array(kitPieceSchema), v.minLength(1), v.maxLength(120)),
  troubles: v.optional(v.pipe(v.array(troubleSchema), v.maxLength(40))),
});
/** Everything true of one job that no hand has done. In a run only a planted fault changes it. */
export type Job = v.InferOutput<typeof jobSchema>;
export type MainSize = v.InferOutput<typeof mainSizeSchema>;
export type TeeSize = v.InferOutput<typeof teeSizeSchema>;

/** Gas space of the service from the tee to its far end, m³: bore of the pipe by its length. */
export function serviceVolumeM3({ system: { service } }: Job): number {
  return circleM2(pipes[service.nps].idM) * service.lengthM;
}

export type Work = 'abandon' | 'renew' | 'reconnect';

/** What the job is for: the service taken away, a new one laid from the same coupling, or the old one put back. */
export function workOf({ system: { renewal } }: Job): Work {
  if (renewal === undefined) return 'abandon';
  return renewal.line === 'new' ? 'renew' : 'reconnect';
}

/** Ids of what comes inside a renewal tee. */
export const stopperIn = (tee: string): string => `${tee}-stopper`;
export const keeperIn = (tee: string): string => `${tee}-keeper`;

/** The kit with the stopper and keeper that renewal tees bring with them; flaws of the tee's rubber are its stopper's. */
export function wholeKit({ kit }: Pick<Job, 'kit'>): readonly KitEntry[] {
  return kit.flatMap((entry) => {
    if (entry.kind !== 'renewalTee') return [entry];
    const { id, stamped, trueSize, defects } = entry;
    const size = trueSize ?? stamped;
    return [
      entry,
      { id: stopperIn(id), kind: 'boreStopper', stamped: size, defects },
      { id: keeperIn(id), kind: 'keeperPlug', stamped: size },
    ];
  });
}

/** Least test pressure of the service by the pressure on the order, Pa gauge: 49 CFR 192.511, and by 192.725 the old line's too. */
export function serviceTestGaugePa({ system }: Job): number {
  return requiredServiceTestGaugePa(system.orderPressureGaugePa);
}

const ofRenewalOnly: readonly RecordField[] = ['serviceTest', 'serviceTestDuration', 'gasPurge'];
const ofAbandonment: readonly RecordField[] = ['disconnected', 'purged', 'sealed', 'abandonedFacility'];

/** Fields of the record that a job asks for: those of a test (49 CFR 192.517(a)) and of what is abandoned or put in service. */
export function recordFieldsOf(job: Job): readonly RecordField[] {
  const work = workOf(job);
  return recordFields.filter(
    (field) =>
      (work !== 'abandon' || !ofRenewalOnly.includes(field)) &&
      (work !== 'reconnect' || !ofAbandonment.includes(field)),
  );
}
