import type { HoldPointId } from '../../../rig/index.ts';
import type { Act } from '../acts.ts';
import { costs, costsIn, critical, harmless, opensLive, type Expected } from './expected.ts';
import { isPaperKey } from './paperKey.ts';

/** Two acts of which the first must come before the second, and what the other order comes to. */
interface Pair {
  readonly first: readonly string[];
  readonly then: readonly string[];
  readonly toward?: readonly HoldPointId[];
  readonly inStage?: readonly number[];
  /** `omitted`: as leaving that one out. Null where no rule of the trade decides. */
  readonly expected: Expected | 'firstOmitted' | 'thenOmitted' | null;
}

const seats = ['H2', 'H9', 'R4'] as const;
const proof = critical('a step of the proof out of its turn proves nothing');

/** Neighbours whose order matters, or plainly does not. The first pair that fits holds. */
const pairs: readonly Pair[] = [
  // readings need what they read
  { first: ['piece.place testHead'], then: ['gauge.zero head'], expected: 'thenOmitted' },
  { first: ['pump.stroke'], then: ['gauge.read head'], toward: seats, expected: proof },
  { first: ['gauge.read head'], then: ['valve.turn back', 'vent.turn on', 'pump.stroke'], toward: seats, expected: proof },
  { first: ['vent.turn back'], then: ['gauge.read head'], toward: ['H2', 'R4'], expected: proof },
  { first: ['valve.turn on'], then: ['gauge.read head'], toward: ['H2', 'R4'], expected: proof },
  { first: ['keeper.pull on'], then: ['mark keeper'], expected: critical('a mark made before the pull shows nothing after it') },
  { first: ['branch.cut pilot'], then: ['listen'], expected: critical('nobody stood by the pilot') },
  { first: ['bleed.turn on'], then: ['listen'], toward: ['H5'], expected: costs('holdPoints', 1, 'the quiet minute was not kept') },
  { first: ['look downBore'], then: ['valve.turn back'], toward: ['H11', 'R2'], expected: critical('nothing is seen through a shut ball') },
  { first: ['valve.turn on'], then: ['leakFluid.apply topJoint'], expected: 'thenOmitted' },
  { first: ['riser.turn on'], then: ['riser.read'], expected: critical('a shut riser says nothing of the line') },
  { first: ['riser.read'], then: ['riser.turn back'], expected: critical('a shut riser says nothing of the line') },
  { first: ['sealant.apply tieIn'], then: ['piece.place tieIn'], expected: 'firstOmitted' },
  { first: ['sealant.apply newTopPlug'], then: ['rod.load newTopPlug'], expected: 'firstOmitted' },

  // work on what is to be proved
  { first: ['clean boss', 'clean pipe'], then: ['clean pipe', 'clean coupling'], expected: harmless('each face is bare before anything lies on it') },
  { first: ['plug.turn back'], then: ['plug.turn on'], expected: costs('technique', 0.5, 'a plug left cracked masks the proof') },
  { first: ['piece.place chain'], then: ['piece.place seatRing'], expected: harmless('both lie ready for the saddle') },
  { first: ['piece.place seatRing'], then: ['piece.place saddle'], expected: 'firstOmitted' },
  { first: ['piece.place saddle'], then: ['chain.hook on'], expected: 'thenOmitted' },
  { first: ['tensioner.turn on'], then: ['chain.tap'], expected: harmless('they are tapped and drawn up once more') },
  { first: ['piece.place isolationValve'], then: ['valve.turn on'], toward: ['H2'], expected: costs('technique', 0.5, 'the valve was not worked') },
  { first: ['piece.place isolationValve'], then: ['valve.turn on'], expected: harmless('the same valve was worked before') },
  { first: ['valve.turn on'], then: ['valve.turn back'], toward: ['H2'], expected: costs('technique', 0.5, 'the valve was not worked') },
  { first: ['valve.turn on'], then: ['valve.turn back'], expected: harmless('the same valve was worked before') },
  { first: ['valve.turn back'], then: ['piece.place upperSpool'], expected: harmless('there is nothing under it yet') },
  { first: ['vent.turn back'], then: ['valve.turn on'], toward: seats, inStage: [1], expected: harmless('there is nothing behind the vent yet') },
  { first: ['vent.turn on', 'valve.turn back', 'vent.turn back'], then: ['vent.turn on', 'vent.turn back', 'valve.turn on'], toward: ['H2', 'R4'], expected: proof },
  { first: ['piece.place cupGasket'], then: ['piece.place splitCollar'], expected: harmless('rubber and collar are drawn together by the bolts') },
  { first: ['piece.place splitCollar'], then: ['collarBolt.turn on'], expected: 'thenOmitted' },

  // over the valve
  { first: ['valve.turn back'], then: ['vent.turn on'], toward: ['H3', 'H11', 'R2', 'R5'], expected: harmless('the head was vented before') },
  { first: ['vent.turn on'], then: ['piece.remove testHead'], expected: harmless('the head was vented before') },
  { first: ['rod.fit socket'], then: ['rod.load keeperPlug', 'rod.load newTopPlug'], expected: 'thenOmitted' },
  { first: ['rod.load boreStopper'], then: ['collar.set on'], expected: harmless('both are done on the bench') },
  { first: ['collar.set on'], then: ['piece.place rodBarrel'], expected: harmless('it is clamped before the rod goes down') },
  { first: ['rod.load keeperPlug'], then: ['piece.place upperSpool'], expected: harmless('one is bench work, the other is not') },
  { first: ['piece.place upperSpool'], then: ['piece.place rodBarrel'], expected: 'firstOmitted' },
  { first: ['rod.hold on'], then: ['valve.turn on'], toward: ['H4'], expected: costsIn(['technique', 'holdPoints'], 0.5, 'the rod stood over a live bore in nobody’s hands') },
  { first: ['rod.move on'], then: ['innerRod.turn on', 'rod.turn on'], expected: critical('there is nothing there to turn against yet') },
  { first: ['rod.move on'], then: ['rod.turn back'], toward: ['H3'], expected: 'thenOmitted' },
  { first: ['rod.turn back'], then: ['rod.move back'], toward: ['H3', 'H11', 'R2'], inStage: [1], expected: 'firstOmitted' },
  { first: ['rod.move back'], then: ['valve.turn back'], expected: 'thenOmitted' },
  { first: ['rod.move back'], then: ['bleed.turn on', 'bleed.turn back'], expected: harmless('the ball is open all the while') },
  { first: ['bleed.turn on'], then: ['innerRod.turn on'], expected: critical('rubber relaxes, and was not snugged after the bleed') },
  { first: ['innerRod.turn on'], then: ['bleed.turn back'], expected: null },
  { first: ['piece.remove rodBarrel'], then: ['piece.place sightCap'], toward: ['H5'], expected: 'thenOmitted' },
  { first: ['piece.place sightCap'], then: ['valve.turn on'], toward: ['H3', 'R2'], expected: opensLive('the ball opens on a live bore with nothing above it') },
  { first: ['piece.place sightCap'], then: ['valve.turn on'], toward: ['H11'], inStage: [1], expected: opensLive('the ball opens on a live bore with nothing above it') },
  { first: ['piece.remove valveCap'], then: ['piece.place sightCap'], expected: opensLive('the ball opens on a live bore with nothing above it') },
  { first: ['piece.remove upperSpool'], then: ['piece.place valveCap'], toward: ['H11'], expected: 'thenOmitted' },
  { first: ['piece.remove sightCap'], then: ['rod.load closingPlug', 'rod.load renewalTee'], expected: harmless('one is bench work, the other is not') },
  { first: ['rod.load out'], then: ['piece.remove upperSpool'], expected: harmless('one is bench work, the other is not') },
  { first: ['tensioner.turn back'], then: ['chain.hook off'], expected: 'thenOmitted' },
  { first: ['chain.hook off'], then: ['piece.remove saddle'], expected: 'thenOmitted' },
  { first: ['piece.remove rodBarrel'], then: ['piece.remove upperSpool'], toward: ['H6'], expected: 'thenOmitted' },
  { first: ['piece.remove sightCap', 'piece.remove isolationValve'], then: ['piece.remove isolationValve', 'piece.remove lowerSpool'], toward: ['H12', 'R6'], expected: 'thenOmitted' },
  { first: ['branch.cut through'], then: ['tee.trim saw'], expected: 'thenOmitted' },
]; // prettier-ignore

const noOrder = harmless('neither hangs on the other');

/** Work that a signature stands before: done first, it is done without. */
const guarded: ReadonlySet<string> = new Set(['branch.cut through', 'site.do relight', 'site.do cover']);

/** Two neighbours in the other order: what it must cost, or null where no rule of the trade decides. */
export function whenSwapped(first: Act, then: Act, omitted: (act: Act) => Expected | null): Expected | null {
  if (then.key.startsWith('sign ')) return afterSigning(first, omitted(first));
  if (first.key.startsWith('sign '))
    return guarded.has(then.key)
      ? costs('holdPoints', 1, 'the work it guards began before it was signed')
      : noOrder;
  const pair = pairs.find((one) => fits(one, first, then));
  if (pair !== undefined) {
    if (pair.expected === 'firstOmitted') return omitted(first);
    return pair.expected === 'thenOmitted' ? omitted(then) : pair.expected;
  }
  return isPaperKey(first.key) && isPaperKey(then.key) ? noOrder : null;
}

/** Done only after the signature it is evidence for: signed without. What else hangs on its moment, no rule here knows. */
export function afterSigning(act: Act, omitted: Expected | null): Expected | null {
  if (omitted === null) return null;
  if ('harmless' in omitted) return isPaperKey(act.key) ? omitted : null;
  if (isPaperKey(act.key) && !omitted.headings.includes('holdPoints')) return null;
  // a task done late is done by the time the work begins that would be grave without it
  return act.key.startsWith('site.do ') ? { ...omitted, least: 1, critical: false } : omitted;
}

function fits({ first: a, then: b, toward, inStage }: Pair, first: Act, then: Act): boolean {
  return (
    a.includes(first.key) &&
    b.includes(then.key) &&
    (toward === undefined || (then.toward !== null && toward.includes(then.toward))) &&
    (inStage === undefined || inStage.includes(first.inStage))
  );
}
