import { isAudible } from '../../physics/index.ts';
import { constants } from '../../catalogue/index.ts';
import { workOf } from '../job.ts';
import type { RigState } from '../state.ts';
import { did, withPiece, type Acts } from './outcome.ts';
import {
  gaugeRangePa,
  gaugeReading,
  measureReading,
  oxygenShown,
  proofConditions,
  shownLel,
} from '../instruments.ts';
import { barrelOn } from '../rodFree.ts';
import { OPEN_RAD } from '../actions.ts';
import { leakLook, sightFrom } from '../sights.ts';
import { teeInside, topPiece } from '../network.ts';
import { troubleSize, turnedUpBy } from '../troubles.ts';

/** Set-up, looking, reading, cleaning, marking and signing: nothing here moves a part of the rig. */
export const siteActs: Acts<
  | 'site.do'
  | 'detector.bump'
  | 'detector.read'
  | 'gauge.zero'
  | 'gauge.read'
  | 'look'
  | 'listen'
  | 'measure'
  | 'clean'
  | 'leakFluid.apply'
  | 'mark'
  | 'piece.inspect'
  | 'piece.reject'
  | 'hose.lead'
  | 'sealant.apply'
  | 'record.write'
  | 'sign'
  | 'withdraw'
  | 'leaveHole'
> = {
  'site.do': (rig, { task }, sense) => {
    if (task === 'layService' && workOf(rig.job) !== 'renew') return 'notPlaced';
    const site = {
      ...rig.site,
      done: { ...rig.site.done, [task]: sense.atS },
      curbOpen: task === 'shutCustomer' ? false : rig.site.curbOpen,
    };
    const found = turnedUpBy(rig, task);
    const line = task === 'layService' ? { ...rig.line, laid: true } : rig.line;
    return did({ ...rig, site, line }, { fact: 'site.done', task, ...(found.length > 0 && { found }) });
  },
  'detector.bump': (rig) => {
    const shownShare = detectorShows(rig);
    return did(
      { ...rig, site: { ...rig.site, detectorBumped: true } },
      {
        fact: 'detector.bumped',
        passed: shownShare >= BUMP_PASSES_SHARE,
        ...(shownShare < 1 && { shownShare }),
      },
    );
  },
  'detector.read': (rig, { where }, sense) => {
    const share = shareAt[where];
    return did(
      { ...rig, site: { ...rig.site, detectorAt: where } },
      {
        fact: 'detector.read',
        where,
        lelShare: sense.overRange ? 1 : shownLel(sense.lelShare * share * detectorShows(rig)),
        trueLelShare: sense.trueLelShare * share,
        oxygenShare: oxygenShown(
          constants.airOxygenFraction.value - (constants.airOxygenFraction.value - sense.oxygenShare) * share,
        ),
      },
    );
  },
  'gauge.zero': (rig, { gauge }) => {
    if (gauge === 'test' && rig.testSet.on === null) return 'notFitted';
    if (gauge === 'head' && !rig.stack.some((p) => p.kind === 'testHead')) return 'needsTestHead';
    const rangePa = gaugeRangePa(rig, gauge);
    const usualRangePa = constants.gaugeRangePa.value;
    return did(
      { ...rig, site: { ...rig.site, zeroed: { ...rig.site.zeroed, [gauge]: true } } },
      { fact: 'gauge.zeroed', gauge, ...(rangePa !== usualRangePa && { rangePa }) },
    );
  },
  'gauge.read': (rig, { gauge }, sense) => {
    const read = gaugeReading(rig, gauge, sense);
    if (read === null) return gauge === 'head' ? 'needsTestHead' : 'notFitted';
    return did(rig, {
      fact: 'gauge.read',
      gauge,
      readingGaugePa: read.readingGaugePa,
      trueGaugePa: read.trueGaugePa,
      zeroed: rig.site.zeroed[gauge] ?? false,
      under: proofConditions(rig),
    });
  },
  look: (rig, { at }, sense) => {
    const saw = sightFrom(rig, at, sense);
    return saw === null ? 'covered' : did(rig, { fact: 'looked', at, saw });
  },
  listen: (rig, _action, sense) => {
    const levelDb = Math.max(sense.bleedDb, sense.holeDb);
    return did(rig, { fact: 'listened', levelDb, heard: isAudible(levelDb, sense.streetDb) });
  },
  measure: (rig, { what }, sense) => {
    const read = measureReading(rig, what, sense);
    return read === null ? 'notFitted' : did(rig, { fact: 'measured', what, ...read });
  },
  clean: (rig, { at }) => {
    if (at === 'boss' && (rig.saddle.on === 'tee' || rig.seatRing.piece !== null)) return 'covered';
    if (at === 'coupling' && (rig.collar.gasket !== null || teeInside(rig))) return 'covered';
    if (at === 'pipe' && rig.chains.some((chain) => chain.hooked)) return 'covered';
    if (at === 'bore' && !boreReached(rig)) return 'covered';
    return did(
      { ...rig, site: { ...rig.site, cleaned: { ...rig.site.cleaned, [at]: true } } },
      { fact: 'cleaned', at },
    );
  },
  'leakFluid.apply': (rig, { at, watchS }, sense) => {
    const seen = leakLook(rig, at, sense);
    if (typeof seen === 'string') return seen;
    return did(rig, { fact: 'leak.looked', at, watchS, ...seen });
  },
  mark: (rig, { at }) => {
    const turns = {
      plug: rig.plug.turnsBack,
      tee: rig.tee.turnsBack,
      keeper: rig.keeper.engagedTurns,
      portLine: 0,
    };
    if (at === 'plug' && rig.plug.at !== 'tee') return 'notFitted';
    if (at === 'keeper' && rig.keeper.at !== 'tee') return 'notFitted';
    if ((at === 'plug' || at === 'keeper') && rig.saddle.on !== 'board') return 'covered';
    return did(
      { ...rig, site: { ...rig.site, marks: { ...rig.site.marks, [at]: turns[at] } } },
      { fact: 'marked', at },
    );
  },
  'piece.inspect': (rig, { piece }) => {
    const entry = rig.kit[piece];
    if (entry === undefined || entry.where === 'lost') return 'notOnBoard';
    if (entry.where !== 'board') return 'alreadyFitted';
    const found = Object.keys(entry.defects).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
    if (entry.trueSize !== entry.stamped) found.push('sizeNotAsStamped');
    return did(withPiece(rig, piece, { inspected: true }), { fact: 'piece.inspected', piece, found });
  },
  'piece.reject': (rig, { piece }) => {
    const entry = rig.kit[piece];
    if (entry === undefined || entry.where !== 'board') return 'notOnBoard';
    if (entry.rejected) return 'alreadyDone';
    const doubtful = Object.keys(entry.defects).length > 0 || entry.trueSize !== entry.stamped;
    return did(withPiece(rig, piece, { rejected: true }), { fact: 'piece.rejected', piece, doubtful });
  },
  'hose.lead': (rig, { outlet }, sense) => {
    // a hose that lies badly can be led to the same place again
    const lies = troubleSize(rig, 'hoseKinked') === 0 && troubleSize(rig, 'hoseDrifted') === 0;
    if (rig.hose === outlet && lies) return 'alreadyThere';
    return did({ ...rig, hose: outlet, site: { ...rig.site, hoseLedAtS: sense.atS } });
  },
  'sealant.apply': (rig, { piece }) => {
    const entry = rig.kit[piece];
    const inSocket = entry?.where === 'rod' && !barrelOn(rig);
    if (entry === undefined || (entry.where !== 'board' && !inSocket)) return 'notOnBoard';
    return did(withPiece(rig, piece, { sealant: true }));
  },
  'record.write': (rig, { field, value }) =>
    did(
      { ...rig, site: { ...rig.site, record: { ...rig.site.record, [field]: value } } },
      { fact: 'record.written', field, value },
    ),
  sign: (rig, { holdPoint }, sense) => {
    if (rig.site.signed[holdPoint] !== undefined) return 'alreadyDone';
    return did(
      { ...rig, site: { ...rig.site, signed: { ...rig.site.signed, [holdPoint]: sense.atS } } },
      { fact: 'signed', holdPoint },
    );
  },
  withdraw: (rig, { holdPoint }) => {
    if (rig.site.signed[holdPoint] === undefined) return 'notPlaced';
    const signed: Record<string, number> = {};
    for (const [id, atS] of Object.entries(rig.site.signed)) if (id !== holdPoint) signed[id] = atS;
    return did({ ...rig, site: { ...rig.site, signed } }, { fact: 'withdrawn', holdPoint });
  },
  leaveHole: (rig) => did({ ...rig, site: { ...rig.site, inHole: false } }),
};

/** A brush gets to the lower bore from the open tee, or on a wire through what closes the stack, the ball being open (assumed). */
function boreReached(rig: RigState): boolean {
  if (rig.tee.at !== 'coupling' || rig.plug.at === 'tee' || rig.keeper.at === 'tee') return false;
  return rig.saddle.on === 'board' || (topPiece(rig) !== null && rig.valve.openRad >= OPEN_RAD);
}

/** Least share of the bump gas a fit detector shows (assumed: operators ask for 80 to 90 %). */
const BUMP_PASSES_SHARE = 0.5;

/** Share of the true figure that the detector shows. */
function detectorShows(rig: RigState): number {
  return troubleSize(rig, 'detectorUnfit') === 0 ? 1 : 1 - troubleSize(rig, 'detectorUnfit');
}

/** Share of the hole's average that stands there: over its edge, at a kneeling face, at the bottom (assumed). */
const shareAt = { beside: 0.05, breathing: 0.6, hole: 1 } as const;
