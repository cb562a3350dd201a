import type { FindingWords } from '../../../catalogue.ts';
import { degrees, turnsOf } from '../../../units.ts';
import { cleanPlaces, leakPlaces } from '../places.ts';
import { itemsOf, numberOf, piecesOf, seats, timesOf } from './shared.ts';

/** Seal, plug, valve and rod: how the work was done. */
export const techniqueFindings = {
  tensionUneven: {
    title: 'Chain drawn up unevenly',
    happened: (f) =>
      `With the saddle ${itemsOf(f, seats)}, left and right of a chain stood ${turnsOf(numberOf(f, 'apartTurns'))} apart; ${turnsOf(numberOf(f, 'limitTurns'))} is the most.`,
    why: 'A saddle drawn down on one side leans, and its rubber opens on the other.',
    next: 'A little each side in turn, and even at the end.',
  },
  notTapped: {
    title: 'Links not tapped, or not drawn up again',
    happened: (f) => `${numberOf(f, 'chains')} of the chains, saddle ${itemsOf(f, seats)}.`,
    why: 'Links and scale settle under load, and the tension goes with them.',
    next: 'Tap the links flat, then tighten again.',
  },
  chainOverloaded: {
    title: 'Chain overloaded',
    happened: (f, { units }) =>
      `${units.force(numberOf(f, 'legForceN'))} in one leg; ${units.force(numberOf(f, 'limitN'))} is the most.`,
    why: 'A chain that parts lets the saddle go.',
    next: 'Firm by the kit’s own wrench is enough; no bar on it.',
  },
  chainLetGo: {
    title: 'Chain let go under pressure',
    happened: (f, { units }) =>
      `The chains were let go with ${units.pressure(numberOf(f, 'chamberGaugePa'))} in the chamber and ${units.force(numberOf(f, 'forceN'))} in them.`,
    why: 'The saddle lifts, the gas comes out all round, and the chain whips.',
    next: 'Chains are slackened last, when the coupling or keeper has been shown to hold.',
  },
  plugNotCracked: {
    title: 'Plug’s bite not broken',
    happened: () => 'The rig was set over a top plug that had not been moved.',
    why: 'A seized plug is found too late: with the rig over it no wrench reaches it.',
    next: 'At most an eighth of a turn back, hold-back on the tee, then snug.',
  },
  plugNotSnugged: {
    title: 'Plug not snugged again',
    happened: (f) => {
      const back = numberOf(f, 'turnsBack');
      const fluid = numberOf(f, 'looked') > 0 ? '' : ' and was not looked at with leak fluid';
      return `The plug stood ${back > 0.02 ? `${turnsOf(back)} back` : 'back where it was'}${fluid} when the saddle went on.`;
    },
    why: 'A passing plug feeds the chamber and hides a leak in the proof.',
    next: 'Snug it back until leak fluid is quiet.',
  },
  plugNotMarked: {
    title: 'Plug not marked',
    happened: () => 'No paint mark across plug and tee before it was turned.',
    why: 'Without a mark nobody knows how far it has gone.',
    next: 'Mark, then turn.',
  },
  noHoldBack: {
    title: 'No hold-back',
    happened: (f) => `Turned ${timesOf(f)} without a second wrench to hold back.`,
    why: 'It is the loosest thread that turns, and that may be the live one.',
    next: 'Two wrenches, always: one to turn, one to hold.',
  },
  wrongJointTurned: {
    title: 'The wrong joint turned',
    happened: (f, s) => `The joint under ${piecesOf(f, s)} turned.`,
    why: 'A joint below the ball that turns opens the live chamber.',
    next: 'Stop turning, hold back, snug it, bleed, mark, prove.',
  },
  valveNotWorked: {
    title: 'Valve not worked',
    happened: () => 'The isolation valve was not opened and shut before it was relied on.',
    why: 'Later it is the only wall. A stiff handle is found out before.',
    next: 'Open it, shut it, then build on it.',
  },
  valveOpenedQuickly: {
    title: 'Valve thrown open',
    happened: (f) => `Opened ${degrees(numberOf(f, 'turnedRad'))} in one go, ${timesOf(f)}, under pressure.`,
    why: 'The rod is struck, and a bad joint above gives no warning.',
    next: 'Ease it open a little, look, then go on.',
  },
  valveOpenedBleedOpen: {
    title: 'Valve opened with the bleed open',
    happened: (f, { units }) =>
      `The bleed stood ${degrees(numberOf(f, 'bleedOpenRad'))} open with ${units.pressure(numberOf(f, 'differenceGaugePa'))} across the valve.`,
    why: 'The main then blows through the bleed.',
    next: 'Bleed shut before the valve is touched.',
  },
  rodNotHeld: {
    title: 'Rod not held',
    happened: (f, { units }) =>
      `The valve was opened ${timesOf(f)} with nobody holding the rod, on ${units.pressure(numberOf(f, 'differenceGaugePa'))}.`,
    why: 'Pressure drives the rod up; at high pressure it flies.',
    next: 'Hold the rod, face clear of it, then ease the valve open.',
  },
  rodThrown: {
    title: 'Rod thrown',
    happened: (f, { units }) =>
      `${units.force(numberOf(f, 'thrustN'))} at ${units.pressure(numberOf(f, 'pressureGaugePa'))} threw it up: ${units.energy(numberOf(f, 'energyJ'))}.`,
    why: 'A thrown rod strikes whoever leans over it.',
    next: 'Hold it from before the valve opens until after it is shut.',
  },
  newJointUnchecked: {
    title: 'New joint not looked at',
    happened: (f) => `The barrel’s joint went without leak fluid ${timesOf(f)}, of ${numberOf(f, 'of')}.`,
    why: 'Each time a piece goes on, its joint is new, and no proof covers it.',
    next: 'Ease the valve open, leak fluid on the new joint, then go on.',
  },
  noCrackCheck: {
    title: 'No second look at the bleed',
    happened: (f) =>
      `The barrel came off ${timesOf(f)}, of ${numberOf(f, 'of')}, without the bleed shut and opened again.`,
    why: 'An open bleed is quiet on a slowly passing valve too.',
    next: 'Quiet, shut, wait, open: no puff. Then off.',
  },
  overPumped: {
    title: 'Pumped too high',
    happened: (f, { units }) =>
      `The chamber came to ${units.pressure(numberOf(f, 'highestGaugePa'))}; ${units.pressure(numberOf(f, 'limitGaugePa'))} is the most.`,
    why: 'More pressure proves nothing more, and stores more to be let go.',
    next: 'Read while you pump; single strokes near the end.',
  },
  reliefLifted: {
    title: 'Relief lifted',
    happened: (f, { units }) => `The relief lifted at ${units.pressure(numberOf(f, 'headGaugePa'))}.`,
    why: 'The relief is the last guard of the rating, not a way to find it.',
    next: 'Stop pumping well below it.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

/** Stopper, cut, tee and closing plug. */
export const laterTechniqueFindings = {
  stopperTorque: {
    title: 'Stopper not firm, or forced',
    happened: (f, { units }) =>
      `Left at ${units.fingerTorque(numberOf(f, 'torqueNm'))}; firm is ${units.fingerTorque(numberOf(f, 'lowNm'))} to ${units.fingerTorque(numberOf(f, 'highNm'))}.`,
    why: 'Too little creeps when the bleed opens; too much tears the rubber.',
    next: 'Finger effort until firm, and once more when the rubber has relaxed.',
  },
  stopperTorn: {
    title: 'Stopper torn',
    happened: () => 'The rubber tore under the inner rod.',
    why: 'A torn stopper seals nothing.',
    next: 'Stop at firm. Draw it and set a new one.',
  },
  stopperDepth: {
    title: 'Stopper at the wrong depth',
    happened: (f, { units }) =>
      `Its washer stood ${units.length(numberOf(f, 'belowPortM'))} below the port; ${units.length(numberOf(f, 'lowM'))} to ${units.length(numberOf(f, 'highM'))} is right.`,
    why: 'Rubber beside the port bulges into it and the service keeps feeding.',
    next: 'Measure to the inside underside of the port, and let the depth collar stop the rod.',
  },
  stopperSlipped: {
    title: 'Stopper slipped',
    happened: (f, { units }) =>
      `It slid ${units.length(numberOf(f, 'byM'))}: ${units.force(numberOf(f, 'thrustN'))} pushed, ${units.force(numberOf(f, 'holdsN'))} held.`,
    why: 'What slides a little goes on sliding.',
    next: 'Dry bore, firm squeeze, keeper over it.',
  },
  stopperLost: {
    title: 'Stopper lost in the main',
    happened: () => 'The stopper fell into the main.',
    why: 'It travels, and may lie in somebody’s valve.',
    next: 'Close off, report it; the job is not complete.',
  },
  depthNotMeasured: {
    title: 'Depth not measured',
    happened: (f) =>
      `${numberOf(f, 'lengthsTaken')} of four lengths taken, depth collar ${numberOf(f, 'collarClamped') > 0 ? 'clamped' : 'not clamped'}.`,
    why: 'The hub outside is lower than the port inside: the eye is misled.',
    next: 'Take the four lengths, add them up, clamp the collar.',
  },
  cutStopUnproved: {
    title: 'Cut with the stop unproved',
    happened: (f, { units }) =>
      `The saw went in with ${units.pressure(numberOf(f, 'pressureGaugePa'))} in the branch and no proof of the stop.`,
    why: 'If the stopper passes, the main blows through the cut.',
    next: 'Bleed, quiet, shut, no puff: then the keeper, then the pilot hole, then the cut.',
  },
  pipeUnsupported: {
    title: 'Pipe not supported',
    happened: () => 'The branch was cut with the pipe hanging free.',
    why: 'A pipe under strain springs at the cut.',
    next: 'Support both sides first, and stand clear.',
  },
  edgesNotFiled: {
    title: 'Edges not filed',
    happened: () => 'The cup gasket went over sawn edges.',
    why: 'A burr cuts the rubber as it goes over.',
    next: 'File the edges round.',
  },
  teeNotSnugged: {
    title: 'Tee not snugged again',
    happened: (f) => `The tee stood ${turnsOf(numberOf(f, 'turnsBack'))} back when the saddle went on.`,
    why: 'A loose thread feeds the second chamber and spoils its proof.',
    next: 'Break its bite, at most an eighth of a turn, then snug it back.',
  },
  couplingUnchecked: {
    title: 'Thread and weld not looked at',
    happened: (f) => `No leak fluid after the bite was broken on: ${itemsOf(f, leakPlaces)}.`,
    why: 'Breaking the bite strains an old weld; after the saddle is on it cannot be seen.',
    next: 'Leak fluid on thread and weld before the gasket goes on.',
  },
  boltsUneven: {
    title: 'Collar bolts uneven',
    happened: (f) =>
      `The bolts stood ${turnsOf(numberOf(f, 'apartTurns'))} apart; ${turnsOf(numberOf(f, 'limitTurns'))} is the most.`,
    why: 'An uneven collar pinches the gasket.',
    next: 'A little each in turn, and even at the end.',
  },
  valveNotCapped: {
    title: 'Valve left bare',
    happened: () => 'With the coupling open below, the valve stood without its cap.',
    why: 'Then the ball’s seat is all there is between the main and the hole.',
    next: 'Cap on the valve whenever nothing else is.',
  },
  threadNotFound: {
    title: 'Thread not found first',
    happened: () => 'The closing plug was driven without turning back to find the thread.',
    why: 'A crossed plug binds early, weeps, and cannot be drawn out again.',
    next: 'Turn back until it drops, then in.',
  },
  facesNotCleaned: {
    title: 'Faces not cleaned',
    happened: (f) => `Not cleaned before use: ${itemsOf(f, cleanPlaces)}.`,
    why: 'Rust under rubber leaks, and scale under a chain gives.',
    next: 'Bare, sound metal under every seal and chain.',
  },
  coachAsked: {
    title: 'The coach was asked',
    happened: (f) =>
      `The coach was asked ${timesOf(f)}; this exercise takes ${numberOf(f, 'each')} points for each.`,
    why: 'A crew that has to ask what is next in the hole does not yet know the job.',
    next: 'Practise until it comes without asking.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;
