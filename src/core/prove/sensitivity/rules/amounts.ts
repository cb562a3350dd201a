import type { Act } from '../acts.ts';
import { costs, costsIn, critical, harmless, undecided, type Expected } from './expected.ts';
import { firstFitting, saidBy, type Line } from './line.ts';

const seats = ['H2', 'H9', 'R4'] as const;
const enough = harmless('what is left still does it');

const deeper = undecided('a tee that stands deeper may or may not come by as many turns');

/** Half of it. What no line says comes to the same as leaving it out. */
const less: readonly Line[] = [
  { keys: ['plug.turn back', 'keeper.turn back'], expected: enough },
  { keys: ['tee.turn back'], expected: deeper },
  { keys: ['keeper.turn on'], expected: costsIn(['technique', 'holdPoints'], 0.5, 'the keeper is left cracked') },
  {
    keys: ['tensioner.turn on', 'tensioner.turn back'],
    expected: undecided('the proof is the judge of it'),
  },
  { keys: ['collarBolt.turn on'], expected: harmless('the bolts stand even, and the proof is the judge of them') },
  { keys: ['rod.turn back'], toward: ['H11', 'R2'], inStage: [2], expected: enough },
  { keys: ['rod.turn back'], toward: ['R5'], inStage: [2, 3], expected: enough },
  { keys: ['innerRod.turn back'], expected: enough },
  { keys: ['rod.move back'], toward: ['R5'], fromEnd: [1], expected: undecided('the ball may just shut over it') },
  { keys: ['riser.turn on'], expected: undecided('it is the share that is read') },
  { keys: ['bleed.turn on'], toward: ['H11', 'R2', 'R5'], inStage: [5], expected: undecided('it may be quiet in time') },
  { keys: ['innerRod.turn on'], inStage: [2], expected: enough },
  { keys: ['vent.turn on'], expected: enough },
  { keys: ['valve.turn back'], toward: ['H3', 'H11', 'R2', 'R5'], inStage: [1], expected: harmless('the rod stands on a ball that is half shut') },
  { keys: ['rod.turn on'], toward: ['H6'], expected: harmless('the wrench takes it home') },
  { keys: ['bleed.turn on'], toward: ['H4'], inStage: [3], expected: costs('holdPoints', 1, 'its quiet minute was half hiss') },
  { keys: ['bleed.turn on'], expected: harmless('it is only to hear whether anything comes, and half open tells that') },
  { keys: ['leakFluid.apply plug', 'leakFluid.apply keeper', 'leakFluid.apply benchTee', 'leakFluid.apply lineEnds'], expected: harmless('a weep shows in seconds') },
  { keys: ['leakFluid.apply weld', 'leakFluid.apply teeThread'], toward: ['H9'], expected: harmless('a weep shows in seconds') },
  { keys: ['leakFluid.apply seat', 'leakFluid.apply valveJoint', 'leakFluid.apply spoolJoint', 'leakFluid.apply topJoint'], toward: seats, expected: harmless('ten seconds show a weep at the main’s pressure') },
]; // prettier-ignore

/** Half as much again. What no line says has a stop of its own, or does no harm. */
const more: readonly Line[] = [
  {
    keys: ['plug.turn back', 'tee.turn back'],
    expected: costs('technique', 0.5, 'turned on by what was meant, it is left cracked'),
  },
  { keys: ['keeper.turn back'], expected: costsIn(['technique', 'holdPoints'], 0.5, 'the keeper is left cracked') },
  { keys: ['pump.stroke'], toward: seats, inStage: [1], expected: critical('past the low stage without a look') },
  { keys: ['pump.stroke'], toward: seats, expected: critical('far over the main') },
  { keys: ['innerRod.turn on'], inStage: [1], expected: costs('technique', 1, 'rubber squeezed past firm tears') },
  { keys: ['tee.turn on'], expected: deeper },
  { keys: ['rod.turn on'], toward: ['R2'], expected: critical('its branch points past the service, and does not go back') },
  { keys: ['rod.turn on'], toward: ['H11', 'R5'], expected: undecided('the rod may give no more') },
  { keys: ['tensioner.turn on', 'tensioner.turn back'], expected: undecided('the proof is the judge of it') },
  { keys: ['keeper.pull on'], expected: costs('holdPoints', 1, 'driven past the gap its stem must keep') },
  { keys: ['collar.set on'], expected: costs('technique', 0.25, 'a collar clamped elsewhere than measured stops nothing') },
]; // prettier-ignore

const stops = harmless('it goes as far as its stop and no further, or a little more does no harm');

/** What half of an act must cost, or null where nothing is written; `omitted` is what leaving it out would. */
export function whenLess(act: Act, omitted: Expected | null): Expected | null {
  const line = firstFitting(less, act);
  return line === null ? omitted : saidBy(line);
}

/** What half as much again must cost. */
export function whenMore(act: Act): Expected | null {
  const line = firstFitting(more, act);
  return line === null ? stops : saidBy(line);
}
