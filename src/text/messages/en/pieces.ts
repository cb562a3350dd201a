import type { Catalogue } from '../../catalogue.ts';

export const pieces: Catalogue['pieces'] = {
  main: { name: 'main', what: 'The live steel gas main the coupling stands on.' },
  coupling: {
    name: 'coupling',
    what: 'The threaded coupling welded to the crown of the main; the tee is screwed into it.',
  },
  serviceTee: {
    name: 'service tee',
    what: 'The threaded tee to be taken away: male end in the coupling, barrel upright, branch to the service, plug on top.',
  },
  topPlug: { name: 'top plug', what: 'The square-headed plug in the upper end of the tee.' },
  serviceLine: {
    name: 'service line',
    what: 'The pipe from the branch to the curb valve and the meter stop.',
  },
  seatRing: {
    name: 'seat ring',
    what: 'Flat metal ring with bonded rubber, sized to the tee; seals between the boss and the saddle.',
  },
  saddle: {
    name: 'saddle',
    what: 'The pressure-tight body that stands over the tee and is chained to the main. Used twice.',
  },
  cradleBlock: {
    name: 'cradle block',
    what: 'Grooved block under a small main that gives a chain something to bear on; one for each chain.',
  },
  chain: { name: 'chain', what: 'Holds the saddle down; drawn up by a left and a right tensioner.' },
  isolationValve: {
    name: 'isolation valve',
    what: 'Full-port ball valve on the saddle: with it shut, what stands above can be changed while the main is live.',
  },
  lowerSpool: {
    name: 'lower spool',
    what: 'Short extension pipe for below the isolation valve, where height is needed.',
  },
  upperSpool: {
    name: 'upper spool',
    what: 'Extension pipe for above the isolation valve, long enough to take in the tee.',
  },
  sightCap: {
    name: 'sight cap',
    what: 'Screw-on cap with a thick window and its own bleed, to look down the bore with a lamp.',
  },
  testHead: {
    name: 'test head',
    what: 'Gauge, hand pump with check valve, hand vent, and a relief that lifts by itself.',
  },
  rodBarrel: {
    name: 'rod barrel',
    what: 'Sealed housing with the rod sliding through a gland, and a bleed cock with its bonded hose.',
  },
  rod: {
    name: 'rod',
    what: 'Works through the barrel: what hangs on its tip is lowered, turned and lifted under pressure.',
  },
  socket: {
    name: 'socket',
    what: 'Retaining tip for a square head, by size; keeps hold of what it has unscrewed.',
  },
  stopperHolder: {
    name: 'stopper holder',
    what: 'Twist-lock tip for the bore stopper. It unlatches clockwise, so that tightening can never free it.',
  },
  magnet: { name: 'magnet', what: 'Tip for lifting a dropped piece through the valve.' },
  depthCollar: {
    name: 'depth collar',
    what: 'Clamps on the rod so that it stops, downward only, at the measured travel.',
  },
  boreStopper: {
    name: 'bore stopper',
    what: 'Rubber between two washers, by size; the inner rod squeezes it outward against the lower bore.',
  },
  keeperPlug: {
    name: 'keeper plug',
    what: 'Threaded plug with a stem, set in the top of the tee over the stopper so that nothing can push it out.',
  },
  cupGasket: {
    name: 'cup gasket',
    what: 'Moulded rubber over the trimmed tee, sealing on the round of the coupling.',
  },
  splitCollar: {
    name: 'split collar',
    what: 'Two halves bolted round the coupling; they back up the cup gasket and give the saddle its second seat.',
  },
  closingPlug: {
    name: 'closing plug',
    what: 'Solid steel plug that closes the coupling for good. A spare lies ready.',
  },
  valveCap: { name: 'valve cap', what: 'Cap for the isolation valve whenever nothing else stands on it.' },
  gaugeRing: {
    name: 'gauge ring',
    what: 'Ring a little smaller than the rig’s bore: what passes it can come up through the rig.',
  },
  serviceCap: { name: 'service cap', what: 'Cap for the end of the dead service.' },
  renewalTee: {
    name: 'renewal tee',
    what: 'Round-bodied tee that passes the rig’s bore, its own stopper and keeper already in.',
  },
  newTopPlug: {
    name: 'new top plug',
    what: 'Square-headed plug for the top of the renewal tee, run in through the valve.',
  },
  tieIn: { name: 'tie-in', what: 'Nipple and union that join the tested line to the new tee’s branch.' },
  testSet: {
    name: 'test set',
    what: 'Gauge, hand pump and vent on a hose: for the renewal tee on the bench, then for the service.',
  },
  purgeRiser: {
    name: 'purge riser',
    what: 'Standpipe with a cock for the house end of the line: it lets the purged air go outdoors, overhead.',
  },
};

export const defects: Catalogue['defects'] = {
  oRingNickCdAM2: 'its O-ring is nicked',
  gritCdAM2: 'there is grit on its rubber',
  seatPassingCdAM2: 'its ball is scored',
  glandWeepCdAM2: 'its gland is worn',
  rubberWornCdAM2: 'its rubber is worn',
  oily: 'its rubber is oily',
  bleedBlocked: 'its bleed is choked with debris',
  gaugeStuckPa: 'its pointer sticks',
  gaugeOffsetPa: 'its pointer does not rest at zero',
  ventNotShuttingCdAM2: 'its vent does not shut cleanly',
  pumpCheckLeakCdAM2: 'its pump check leaks back',
  crackedWindow: 'its window is cracked',
  weakDetent: 'its detent is weak',
  sizeNotAsStamped: 'it is not of the size it is stamped with',
  wrongThread: 'its thread is not of this standard',
  stiffNm: 'its handle goes hard',
  filingsCdAM2: 'filings lie on its seat',
  sealantSmeared: 'sealant is smeared on its rubber',
  pinchedCdAM2: 'its lip is pinched',
  looseNm: 'its joint is loose',
  looseGrip: 'its retaining spring is weak',
  jams: 'it jams on the head',
  screwSlips: 'its squeeze screw slips',
  stemLongM: 'its stem is too long',
  stemShortM: 'its stem is too short',
  bottomsTurns: 'its thread is too long for the coupling',
};

export const the: Catalogue['the'] = (_kind, name) => `the ${name}`;
export const numbered: Catalogue['numbered'] = (no) => `no. ${no}`;
