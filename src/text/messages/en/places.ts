import type { Catalogue } from '../../catalogue.ts';

export const siteTasks: Catalogue['siteTasks'] = {
  readOrder: { button: 'Read the work order', done: 'Read the work order.' },
  traceAtMain: { button: 'Trace the service at the main', done: 'Traced the service at the main.' },
  traceAtMeter: {
    button: 'Trace the service at the meter',
    done: 'Traced the service at the meter: it is the one ordered.',
  },
  permit: { button: 'See that the permit is in hand', done: 'Permit seen and in hand.' },
  ignitionCleared: { button: 'Clear ignition sources', done: 'Ignition sources cleared and kept out.' },
  extinguisher: {
    button: 'Set out the fire extinguisher',
    done: 'Fire extinguisher set out at hand, upwind.',
  },
  barricade: { button: 'Set the barricade', done: 'Barricade set; traffic and public kept off.' },
  ladder: { button: 'Set the ladder', done: 'Ladder set: a way out within 25 ft.' },
  shoring: { button: 'Set the trench protection', done: 'Trench protection set.' },
  callGasControl: { button: 'Call gas control', done: 'Gas control called; they know of the work.' },
  findShutoff: {
    button: 'Find the valves that shut the main',
    done: 'Valves that shut the main found, their key on site.',
  },
  shutCustomer: {
    button: 'Shut the customer off',
    done: 'Customer shut off at the curb valve and the meter stop.',
  },
  tagCustomer: { button: 'Tag the customer’s valve', done: 'Customer’s valve tagged.' },
  checkFarFeed: {
    button: 'Check for a feed from elsewhere',
    done: 'Checked: is the service fed from elsewhere?',
  },
  bringRig: {
    button: 'Bring the rig to hand',
    done: 'Rig brought to hand: saddle, chains, gasket and collar.',
  },
  bringSpares: {
    button: 'Bring the spare plug and valve cap to hand',
    done: 'Spare plug and valve cap brought to hand.',
  },
  secondPerson: {
    button: 'Call the second person to the hole',
    done: 'Second person at the hole: one on the rod, one on valve and bleed.',
  },
  supportPipe: { button: 'Support the pipe at the cut', done: 'Pipe supported on both sides of the cut.' },
  ventilate: {
    button: 'Set a blower to ventilate the hole',
    done: 'Blower set on the ground, its trunk to the bottom of the hole.',
  },
  pumpOutWater: { button: 'Pump the water out', done: 'Water pumped out of the hole.' },
  clearPublic: {
    button: 'Send people and vehicles back',
    done: 'People and vehicles sent back; nobody smokes near the hole.',
  },
  measureVolts: {
    button: 'Measure the voltage across the cut',
    done: 'Voltage between main and service measured.',
  },
  openMeterStop: {
    button: 'Vent the service at the meter stop, outdoors',
    done: 'Service vented outdoors at the meter stop.',
  },
  retrieveByLine: {
    button: 'Bring the person out by the line',
    done: 'Person brought out by the line; nobody went in without air.',
  },
  changeDetector: { button: 'Take another detector', done: 'Another detector taken.' },
  changeGauge: { button: 'Fit another gauge on the main', done: 'Another gauge fitted on the main.' },
  coat: { button: 'Make the coating good', done: 'Coating made good.' },
  cover: { button: 'Cover and make the ground safe', done: 'Hole covered and ground made safe.' },
  layService: {
    button: 'Lay the new service to its riser',
    done: 'New service laid from beside the tee to its riser, both ends at hand.',
  },
  relightList: {
    button: 'Go through the operator’s relight list',
    done: 'Relight list gone through with the customer: appliances off, house piping checked, vents clear.',
  },
  relight: { button: 'Relight', done: 'Relit by the operator’s procedure.' },
};

export const lookPlaces: Catalogue['lookPlaces'] = {
  boss: 'boss',
  coupling: 'coupling and its weld',
  wall: 'wall of the main under the chains',
  wrap: 'wrap on the main',
  downBore: 'bore, through the sight cap with the lamp',
  gasketSeat: 'round of the coupling, where the cup gasket will seal',
  around: 'hole, its edge and what comes near',
  hose: 'bleed hose along to its end',
  chains: 'chains and how they bear',
};

export const leakPlaces: Catalogue['leakPlaces'] = {
  plug: 'top plug',
  teeThread: 'tee’s thread in the coupling',
  weld: 'weld of the coupling',
  keeper: 'keeper plug',
  seat: 'saddle’s seat',
  valveJoint: 'joint below the isolation valve',
  spoolJoint: 'spool joints',
  topJoint: 'joint of the piece on top',
  gland: 'rod’s gland',
  closingPlug: 'closing plug',
  cutEnd: 'cut end of the service',
  benchTee: 'open branch of the renewal tee on the bench',
  lineEnds: 'ends and joints of the line under test',
  tieIn: 'tie-in',
  newPlug: 'new top plug',
};

export const cleanPlaces: Catalogue['cleanPlaces'] = {
  boss: 'boss',
  pipe: 'pipe under the chains',
  coupling: 'coupling',
  bore: 'bore',
  closingPlug: 'closing plug’s place and thread',
  weldBead: 'weld bead under the gasket, with a file',
};

export const markPlaces: Catalogue['markPlaces'] = {
  plug: 'paint mark across top plug and tee',
  tee: 'paint mark across tee and coupling',
  keeper: 'paint mark across keeper and tee',
  portLine: 'line where the inside underside of the branch port lies',
};

export const measures: Catalogue['measures'] = {
  stackHeight: 'height of the stack',
  seatToBoss: 'seat face to boss',
  bossToPort: 'boss to the underside of the port',
  tipOffset: 'offset of the tip',
};

export const gauges: Catalogue['gauges'] = {
  main: 'main gauge',
  second: 'second gauge',
  head: 'test-head gauge',
  manometer: 'manometer',
  test: 'gauge of the test set',
};

export const detectorPlaces: Catalogue['detectorPlaces'] = {
  hole: 'low in the hole',
  breathing: 'at breathing height',
  beside: 'on the ground beside the hole',
};

export const recordFields: Catalogue['recordFields'] = {
  mainPressure: 'main pressure as read',
  proof1: 'first chamber proof',
  proof2: 'second chamber proof',
  leakTest: 'leak test of plug, weld and cut end',
  disconnected: 'service disconnected',
  purged: 'service purged',
  sealed: 'service sealed',
  testMedium: 'test medium',
  testDuration: 'how long the proofs were held, minutes',
  serviceTest: 'test pressure of the service',
  serviceTestDuration: 'how long the service’s test was held, minutes',
  gasPurge: 'share of gas at the riser when purged, per cent',
  leaksFound: 'leaks and failures, and what became of them',
  abandonedFacility: 'what is abandoned, and where it lies',
  operator: 'operator, and who made the tests',
  crew: 'employee responsible, and crew',
};

export const bubbles: Catalogue['bubbles'] = {
  none: 'no bubbles',
  fine: 'fine bubbles, slowly growing',
  steady: 'a steady stream of bubbles',
  blowing: 'the fluid is blown away',
};

export const referReasons: Catalogue['referReasons'] = {
  pressureAboveRating: 'main pressure above the rating',
  bossBeyondUse: 'boss beyond use',
  wallUnsound: 'wall of the main unsound',
  suspectWrap: 'suspect wrap on the main',
  wrongService: 'not the service ordered',
  outOfRange: 'tee or main out of range of this method',
  plugSeized: 'top plug seized',
  proofFails: 'chamber proof does not hold',
  stopFails: 'bore cannot be stopped',
  valvePassing: 'isolation valve passing',
  gasInHole: 'gas in the hole',
  weldLeaks: 'weld of the coupling leaks',
  threadWorn: 'thread of the coupling worn',
  teeSeized: 'tee seized in the coupling',
  strayVolts: 'stray voltage on the pipe',
  insertFound: 'another pipe inside the service',
  liquidInMain: 'liquid in the main',
  mainMoves: 'pressure of the main does not hold still',
  kitUnfit: 'no sound piece of kit for it',
  siteUnsafe: 'site not safe to work on',
  other: 'another reason',
};

export const hindrances: Catalogue['hindrances'] = {
  ended: 'The run has ended.',
  busy: 'Your hands are still at the last task.',
  notOnBoard: 'That piece does not lie on the kit board.',
  notFitted: 'That piece is not on the rig.',
  alreadyFitted: 'That is fitted already.',
  occupied: 'Something else stands there.',
  nothingBelow: 'There is nothing there to stand it on.',
  covered: 'It is covered; a hand cannot reach it.',
  doesNotFit: 'It does not go on there.',
  ballInTheWay: 'The ball of the isolation valve is in the way.',
  pieceInBall: 'Something stands through the ball: the valve will not turn. Do not force the handle.',
  atStop: 'It is at its stop and goes no further that way.',
  atCollar: 'The depth collar is at its stop.',
  needsTestHead: 'There is no test head on the rig.',
  needsBleed: 'There is no bleed on top of the rig.',
  needsBarrel: 'There is no rod barrel on the rig.',
  barrelOn: 'The rod barrel is on the rig; its tip cannot be reached.',
  needsTip: 'There is no tip on the rod.',
  needsLoad: 'There is nothing on the tip.',
  wrongTip: 'This tip does not take it.',
  notReached: 'The tip does not reach it yet.',
  tooTight: 'It is too tight for this hand.',
  chained: 'The saddle is held by its chains.',
  notHooked: 'That chain is not hooked.',
  noChains: 'The chain is not on the main.',
  outOfReach: 'It cannot be reached from here.',
  notCut: 'The branch is not cut.',
  alreadyDone: 'That is done already.',
  heldByThread: 'Its thread holds it.',
  noHeadroom: 'There is no height for it.',
  notPlaced: 'It is not in its place.',
  rejected: 'That piece was set aside as doubtful.',
  ratchetEnd: 'The tensioner is at the end of its thread.',
  alreadyThere: 'It is there already.',
};
