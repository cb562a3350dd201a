import type { HoldPointId } from '../../../../rig/index.ts';
import { costs, costsIn, critical, harmless, opensLive, type Expected } from '../expected.ts';
import type { Line } from '../line.ts';

const line = (
  keys: readonly string[],
  toward: HoldPointId,
  inStage: readonly number[] | null,
  expected: Expected,
): Line => ({ keys, toward: [toward], ...(inStage === null ? {} : { inStage }), expected });

const dead = harmless('the chamber is stopped and bled: there is nothing to let go');
const unshown = costs('technique', 0.25, 'the ball was not shown to hold before it was opened to faces');
const bare = costsIn(['technique', 'holdPoints'], 0.25, 'the bore stands open with only a stopper below it');
const burst = opensLive('what stands above the ball comes off full of gas');
const openBall = critical('a rod over an open ball goes down before anybody holds it', [
  'holdPoints',
  'gasControl',
]);
const stop = critical('the bleed’s sequence is the proof of the stop');
const bleeds = ['bleed.turn on'];
const shuts = ['bleed.turn back'];

/** Bleed and valve over the chamber, by what stood below them when they were left out. */
export const bleeding: readonly Line[] = [
  line(['valve.turn back'], 'H3', [1], openBall),
  line(['vent.turn on'], 'H3', null, harmless('the head was vented before')),
  line(['valve.turn back'], 'H3', null, burst),
  line(bleeds, 'H3', [1], burst),
  line(bleeds, 'H3', [2], unshown),
  line(shuts, 'H3', null, unshown),

  line(['valve.turn back'], 'H4', null, burst),
  line(bleeds, 'H4', [1, 2], unshown),
  line(shuts, 'H4', [1], unshown),
  line(bleeds, 'H4', null, stop),
  line(shuts, 'H4', null, stop),

  line(['valve.turn back'], 'H5', null, costs('holdPoints', 1, 'the barrel comes off an open bore')),
  line(bleeds, 'H5', [3], costs('holdPoints', 1, 'the quiet minute was not kept')),
  line(shuts, 'H5', [1], dead),
  line([...bleeds, ...shuts], 'H5', null, unshown),

  line(['valve.turn back'], 'H6', null, bare),
  line(shuts, 'H6', [1], dead),
  line(bleeds, 'H6', [1, 2], bare),
  line(shuts, 'H6', [2], bare),
  line([...bleeds, ...shuts], 'H6', null, critical('nobody heard whether the stop is dry behind the keeper')),

  ...(['H11', 'R2'] as const).flatMap((toward) => [
    line(['valve.turn back'], toward, [1], openBall),
    line(['vent.turn on'], toward, null, harmless('the head was vented before')),
    line(['valve.turn back'], toward, [2, 3], burst),
    line(bleeds, toward, [1], burst),
    line(bleeds, toward, [2, 3, 4], unshown),
    line(shuts, toward, [1, 2], unshown),
    line(bleeds, toward, [5, 6], critical('nobody heard whether the new thread seals')),
    line(shuts, toward, [3], critical('nobody heard whether the new thread seals')),
  ]),
  line(['valve.turn back'], 'H11', null, unshown),
  line(shuts, 'H11', [4], dead),
  line([...bleeds, ...shuts], 'H11', null, unshown),

  line(shuts, 'R3', [1], dead),
  line(['valve.turn back', ...bleeds, ...shuts], 'R3', null, unshown),

  line(['valve.turn back'], 'R5', [1], openBall),
  line(['vent.turn on'], 'R5', null, harmless('the head was vented before')),
  line(['valve.turn back'], 'R5', [2], bare),
  line(['valve.turn back'], 'R5', [3], burst),
  line(['valve.turn back'], 'R5', null, unshown),
  line(bleeds, 'R5', [1, 2], bare),
  line(shuts, 'R5', [1], bare),
  line(shuts, 'R5', [4], dead),
  line(bleeds, 'R5', [3], burst),
  line(bleeds, 'R5', [4], unshown),
  line(shuts, 'R5', [2], unshown),
  line(bleeds, 'R5', [5, 6], critical('nobody heard whether the new plug seals')),
  line(shuts, 'R5', [3], critical('nobody heard whether the new plug seals')),
  line([...bleeds, ...shuts], 'R5', null, unshown),

  line(['valve.turn back', 'bleed.clear', ...bleeds, ...shuts], 'R6', null, dead),
  line(['valve.turn back', 'bleed.clear', ...bleeds, ...shuts], 'H12', null, dead),
];

const blind = critical('what was made was never seen');

/** Opening the ball, and the rod worked through it. */
export const rodWork: readonly Line[] = [
  line(['valve.turn on'], 'H3', [2], costs('holdPoints', 1, 'nothing is seen through a shut ball')),
  line(['valve.turn on'], 'H5', null, costs('holdPoints', 1, 'nothing is seen through a shut ball')),
  line(['valve.turn on'], 'H11', [2, 4], blind),
  line(['valve.turn on'], 'R2', [2], blind),
  line(['valve.turn on'], 'R5', [4], blind),

  line(['rod.hold on'], 'H3', null, costs('technique', 0.5, 'a plug let go throws a rod that nobody holds')),
  line(['rod.hold on'], 'H4', null, critical('the stop was proved with nobody on the rod')),
  line(['rod.hold on'], 'H6', null, dead),
  {
    keys: ['rod.hold on'],
    toward: ['H11', 'R2', 'R5'],
    expected: costsIn(['technique', 'holdPoints'], 0.5, 'the main stands under a rod that nobody holds'),
  },

  line(['rod.move back'], 'H3', null, burst),
  line(['rod.move back'], 'H5', null, costs('holdPoints', 1, 'the ball cannot shut on a rod')),
  line(['rod.move back'], 'H6', null, harmless('barrel and rod come off together over a stop shown dry')),
  line(['rod.move back'], 'H11', [1], burst),
  line(['rod.move back'], 'R2', [1], burst),
  line(['rod.move back'], 'R5', [1], bare),
  line(['rod.move back'], 'R5', [2], burst),
  line(['rod.move back'], 'H11', null, unshown),
  line(['rod.move back'], 'R3', null, unshown),
  line(['rod.move back'], 'R5', null, unshown),

  line(['rod.turn back'], 'H11', [2], costsIn(['technique', 'holdPoints'], 0.5, 'a thread driven without finding it')),
  line(['rod.turn back'], 'R2', [2], costsIn(['technique', 'holdPoints'], 0.5, 'a thread driven without finding it')),
  line(['rod.turn back'], 'R5', [3], costsIn(['technique', 'holdPoints'], 0.5, 'a thread driven without finding it')),

  { keys: ['collar.set on'], expected: costs('technique', 0.5, 'the travel was left to feel') },
]; // prettier-ignore
