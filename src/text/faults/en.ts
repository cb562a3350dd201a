import type { FaultWords } from './words.ts';

/** Every fault: what it is, how it is noticed, what to do. */
export const englishFaults: FaultWords = {
  mislabelledSeatRing: {
    what: 'Stamped with one size, made in another: its rubber stands beside the boss and seals nothing.',
    noticed: 'Look it over against the boss; it sits badly, and the chamber never builds.',
    act: 'Set it aside and take one that is what it says.',
  },
  mislabelledStopper: {
    what: 'A stopper of another size than stamped stays loose in the bore or will not go in.',
    noticed: 'Look it over; it never goes firm, and the bleed never dies.',
    act: 'Set it aside and take one of the bore’s size.',
  },
  mislabelledSocket: {
    what: 'It does not take the square head it is stamped for.',
    noticed: 'Try it on a head before it goes on the rod.',
    act: 'Set it aside and take another.',
  },
  keeperWrongThread: {
    what: 'A thread of another standard binds early and does not seal.',
    noticed: 'Look its thread over; it binds after a turn or two.',
    act: 'Set it aside and take the right keeper.',
  },
  closingPlugWrongThread: {
    what: 'A thread of another standard leaves a way for gas in the one joint that stays in the ground.',
    noticed: 'Look its thread over; leak fluid bubbles on it.',
    act: 'Take the second plug; with none, shut the main.',
  },
  keeperStemLong: {
    what: 'The stem meets the stopper before the thread is tight: it can be driven down, or the keeper stays loose.',
    noticed: 'Measure the stem; the keeper stops turning early.',
    act: 'Take a keeper of the right stem.',
  },
  keeperStemShort: {
    what: 'The stopper can slide past the port before it meets the stem: nothing restrains it.',
    noticed: 'Measure the stem before it goes in.',
    act: 'Take a keeper of the right stem.',
  },
  closingPlugBottoms: {
    what: 'It meets the bottom before its thread is tight, and feels firm without sealing.',
    noticed: 'Look it over; it goes hard with too few turns past hand-tight.',
    act: 'Take the second plug; with none, shut the main.',
  },
  bossPitted: {
    what: 'Pits want more squeeze before a ring seals on them.',
    noticed: 'Look at the boss once it is clean.',
    act: 'Draw up well and prove; if the proof fails, refer back.',
  },
  bossBeyondUse: {
    what: 'Eaten so far that no ring can seal on it.',
    noticed: 'Look at the boss, before and after cleaning.',
    act: 'Stop and refer back.',
  },
  scaleUnderChain: {
    what: 'The links crush it, and the clamp falls after it was made firm.',
    noticed: 'Look at the wall where the chains will lie.',
    act: 'Clean to bare metal; tap the links and tighten again.',
  },
  gritOnRing: {
    what: 'A grain in the rubber holds it off the boss.',
    noticed: 'Look the ring over; the proof falls, the seat bubbles.',
    act: 'Wipe the ring or take another, and prove again.',
  },
  weldBeadUnderGasket: {
    what: 'The gasket should lie on even metal, not on a bead.',
    noticed: 'Look round the coupling where the gasket will seal.',
    act: 'File it even, or seat the gasket clear of it; prove.',
  },
  boreScale: {
    what: 'The stopper beds on scale and lets gas by.',
    noticed: 'Look down the bore with the lamp.',
    act: 'Brush the bore clear and look again.',
  },
  filingsOnSeat: {
    what: 'What was filed off the tee scores the ball’s seat: the valve passes.',
    noticed: 'Look the valve over after trimming; a puff comes back over the shut ball.',
    act: 'Wipe it or take another, and test the seat again.',
  },
  sealantOnRubber: {
    what: 'Smeared rubber slides where it should grip.',
    noticed: 'Look the stopper over before it is latched.',
    act: 'Wipe it clean or take another.',
  },
  oRingNicked: {
    what: 'A cut O-ring leaks most when the pressure is low.',
    noticed: 'Look the joint’s ring over; leak fluid bubbles, the proof falls.',
    act: 'Take the joint apart, take a sound piece, prove again.',
  },
  stopperWorn: {
    what: 'It lets gas by however firm it is squeezed.',
    noticed: 'Look it over; the bleed puffs again after it was shut.',
    act: 'Draw it and take another, or refer back.',
  },
  stopperOily: {
    what: 'Oil takes the grip: it creeps up under pressure.',
    noticed: 'Look it over; it creeps or slips as the bleed is opened.',
    act: 'Hold it, draw it, wipe it, set it again.',
  },
  weakDetent: {
    what: 'A quick move of the rod drops the stopper.',
    noticed: 'Look the holder over before it is used.',
    act: 'Take another holder; fetch a dropped stopper by magnet.',
  },
  glandWeeping: {
    what: 'Gas comes by the rod into the hole where the crew stands.',
    noticed: 'Look the barrel over; leak fluid on the gland.',
    act: 'Take another barrel, or keep the time short and the air watched.',
  },
  bleedBlocked: {
    what: 'Quiet is then not empty, only unknown.',
    noticed: 'It hisses far too long, or never; look it over.',
    act: 'Put a wire through it and bleed again.',
  },
  valvePassing: {
    what: 'The one wall between the main and an open stack is not one.',
    noticed: 'Look the ball over; the seat test and the puff tell it.',
    act: 'Take another valve, or refer back before the plug is out.',
  },
  valveStiff: {
    what: 'In a hurry it cannot be shut in time.',
    noticed: 'Work it open and shut before it is trusted.',
    act: 'Take another valve.',
  },
  gaugeStuck: {
    what: 'A pointer that sticks never falls, whatever leaks.',
    noticed: 'It does not rest at zero nor follow the pump.',
    act: 'Take another test head.',
  },
  gaugeReadsLow: {
    what: 'The chamber is pumped higher than it seems.',
    noticed: 'Check its zero and compare it with the main.',
    act: 'Take another test head.',
  },
  gaugeUnfit: {
    what: 'Its divisions are as great as what matters.',
    noticed: 'Read the dial’s range when you check its zero.',
    act: 'Fit one of a range that suits the main.',
  },
  ventNotShutting: {
    what: 'The proof falls though seat and joints hold.',
    noticed: 'Look the head over; the proof falls with no bubbles.',
    act: 'Take another test head and prove again.',
  },
  pumpCheckLeaks: {
    what: 'A false drop: air goes back through the pump.',
    noticed: 'Look the head over; the proof falls with no bubbles.',
    act: 'Take another test head and prove again.',
  },
  hoseKinked: {
    what: 'Throttled sounds like empty.',
    noticed: 'Look along the hose; the bleed hisses too long.',
    act: 'Lead it again without a kink and bleed again.',
  },
  hoseDrifts: {
    what: 'What is bled comes down on the crew.',
    noticed: 'Look to the hose’s end; the detector climbs while bleeding.',
    act: 'Stop bleeding and lead it away again.',
  },
  gasketPinched: {
    what: 'A lip caught by the collar leaks.',
    noticed: 'Look it over; the second proof falls, the seat bubbles.',
    act: 'Take it off, take another, prove again.',
  },
  gasketBlows: {
    what: 'With the tee out every barrier is single: gas blows into the hole.',
    noticed: 'Gas blows at the saddle.',
    act: 'Plug at once, or clear out and shut the main.',
  },
  windowCracked: {
    what: 'It may burst in the face that looks through it.',
    noticed: 'Look the sight cap over.',
    act: 'Withdraw it and take another.',
  },
  looseJoint: {
    what: 'The loosest joint turns, not the one you mean.',
    noticed: 'Bubbles at the joint, a falling proof, a turn where none was meant.',
    act: 'Stop, hold back, make it up again, prove.',
  },
  socketLetsGo: {
    what: 'The plug falls out of it on the way up and lies in the valve’s way.',
    noticed: 'The rod comes up light.',
    act: 'Do not force the valve; go down, take hold again, lift gently.',
  },
  socketHolds: {
    what: 'It jams on the closing plug; slackening the rig would open the main.',
    noticed: 'The rod will not come up.',
    act: 'The rig stays on; work it loose, never slacken.',
  },
  stopperLetsGo: {
    what: 'A stripped screw loses its squeeze as the holder leaves it.',
    noticed: 'The stopper falls; the rod comes up without it.',
    act: 'Fetch it by magnet and take another; one lost in the main is reported.',
  },
  detectorFailsBump: {
    what: 'It would be silent in gas.',
    noticed: 'Bump-test it before work.',
    act: 'Take another detector.',
  },
  detectorReadsLow: {
    what: 'It answers, but calls a dangerous air safe.',
    noticed: 'Compare what it shows with the test gas.',
    act: 'Take another detector.',
  },
  plugPassing: {
    what: 'Gas from below fills the chamber and hides a leak in the proof.',
    noticed: 'Leak fluid on the plug; the vented, shut chamber rises.',
    act: 'Snug the plug and prove again, or refer back.',
  },
  plugSeized: {
    what: 'No wrench breaks its bite.',
    noticed: 'It does not move at the most a wrench gives.',
    act: 'Oil and time; else refer back.',
  },
  plugRounded: {
    what: 'The wrench slips before the bite breaks.',
    noticed: 'The wrench slips on the square.',
    act: 'Oil and time; else refer back.',
  },
  teeSeized: {
    what: 'Drawing it would twist coupling and main.',
    noticed: 'It does not move at the most a wrench gives.',
    act: 'Oil and time; else refer back with the stub capped.',
  },
  weldLeaks: {
    what: 'The joint that stays in the ground leaks.',
    noticed: 'Leak fluid on the weld.',
    act: 'Leave the rig on as containment and refer back.',
  },
  weldWeepsAfterBite: {
    what: 'Breaking the tee’s bite opens a crack.',
    noticed: 'Leak fluid on the weld after the bite.',
    act: 'Snug the tee, cap the rig over it, refer back.',
  },
  couplingThreadWorn: {
    what: 'A closing plug does not seal in it.',
    noticed: 'Look down at the thread; leak fluid on the plug.',
    act: 'Second plug; else the rig stays capped and the main is shut.',
  },
  curbPassing: {
    what: 'The house that is off is not quite off.',
    noticed: 'Check for a feed from elsewhere.',
    act: 'Vent at the meter stop, outdoors, and tell gas control.',
  },
  farFeed: {
    what: 'Stopping the bore does not make it dead.',
    noticed: 'Check for a feed from elsewhere; the bleed never dies.',
    act: 'Do not cut; refer back.',
  },
  unknownBranch: {
    what: 'More gas hangs on the service, and perhaps another way in.',
    noticed: 'The bleed hisses much longer than it should.',
    act: 'Find where it goes before the saw.',
  },
  secondHouse: {
    what: 'It goes out too and must be relit.',
    noticed: 'Trace the service at the meter’s end.',
    act: 'Tell gas control and put it on the relight list.',
  },
  excessFlowDevice: {
    what: 'The bleed never hisses and the service beyond stays full.',
    noticed: 'The bleed dies far too soon.',
    act: 'Not quiet but unknown: vent at the meter stop.',
  },
  insertInService: {
    what: 'Plastic or copper inside the steel: another procedure, and static.',
    noticed: 'The pilot hole shows it.',
    act: 'Stop and refer back.',
  },
  mainOutOfRound: {
    what: 'The chains draw the saddle askew.',
    noticed: 'Look at the wall; the proof tells whether it seals.',
    act: 'Prove it; if it fails, refer back.',
  },
  thinWall: {
    what: 'The chains would bear on metal that may not carry them.',
    noticed: 'Look at the wall under the chains.',
    act: 'Refer back.',
  },
  suspectWrap: {
    what: 'Old wrap may hold asbestos.',
    noticed: 'Look at the wrap before it is touched.',
    act: 'Stop; a specialist takes it off.',
  },
  wrongService: {
    what: 'The service traced is not the one ordered.',
    noticed: 'Trace it at both ends.',
    act: 'Stop and refer back.',
  },
  pressureAboveTag: {
    what: 'The order was written for another pressure.',
    noticed: 'Read the main on a zero-checked gauge.',
    act: 'Ask before work goes on: refer back.',
  },
  pressureAboveRating: {
    what: 'The rig is not made for it.',
    noticed: 'Read the main on a zero-checked gauge.',
    act: 'Stop and refer back.',
  },
  regulatorCreep: {
    what: 'A regulator does not shut: what was proved is no longer enough.',
    noticed: 'Read the main again before each proof.',
    act: 'Tell gas control; go by the new reading or refer back.',
  },
  mainRisesAfterStop: {
    what: 'Going back would open more than going on.',
    noticed: 'Read the main again before the coupling is opened.',
    act: 'Forward to the nearest closed state; tell gas control.',
  },
  mainFalling: {
    what: 'Another crew works on it, or air may get in.',
    noticed: 'Read the main again.',
    act: 'Stop and call gas control.',
  },
  temperatureDrift: {
    what: 'Sun or frost moves the gauge though nothing leaks.',
    noticed: 'Look round; the reading moves with no bubbles anywhere.',
    act: 'Wait until it is steady and prove again; do not condemn the ring.',
  },
  odourAbsent: {
    what: 'A nose would not warn.',
    noticed: 'Nothing smells as the bleed blows.',
    act: 'Trust the detector; tell gas control.',
  },
  liquidFromBleed: {
    what: 'Liquid in the main: it burns, and it blocks.',
    noticed: 'Liquid comes out of the bleed.',
    act: 'Shut it, stand clear, tell gas control.',
  },
  otherLeak: {
    what: 'Gas comes into the hole that is none of the rig’s.',
    noticed: 'The detector reads before anything is opened.',
    act: 'Leave, ventilate, find it; else refer back.',
  },
  stillAir: {
    what: 'A weep stays in the hole.',
    noticed: 'Look round: not a breath of wind.',
    act: 'Set a blower.',
  },
  ignitionSource: {
    what: 'A flame, spark or engine within reach.',
    noticed: 'Look for it before work.',
    act: 'Clear it away.',
  },
  ignitionArrives: {
    what: 'A vehicle or burner comes near while work goes on.',
    noticed: 'Look round again before gas is bled.',
    act: 'Stop the bleed and clear it away.',
  },
  publicApproaches: {
    what: 'Somebody smoking comes up to the hole.',
    noticed: 'Look round.',
    act: 'Send them back; stop the bleed.',
  },
  waterInHole: {
    what: 'Less air for gas to thin out in, and a bad foothold.',
    noticed: 'Look round.',
    act: 'Pump it out.',
  },
  coldRubber: {
    what: 'Ring and stopper want more squeeze, and seal later.',
    noticed: 'Look round: frost.',
    act: 'Warm the rubber, snug again, take the longer watch.',
  },
  strayVolts: {
    what: 'The saw would draw a spark, or worse.',
    noticed: 'Measure; the bond clamp sparks.',
    act: 'Stop; a specialist finds it.',
  },
  pipeSprings: {
    what: 'It springs as it is parted and wrenches the tee.',
    noticed: 'Supporting it shows the strain.',
    act: 'Support it, relieve it, stand clear.',
  },
  workerDown: {
    what: 'Whoever goes in after them may fall too.',
    noticed: 'Look into the hole.',
    act: 'Call; no entry without air; out by the line.',
  },
};
