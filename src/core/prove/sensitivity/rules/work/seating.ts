import { costs, critical, harmless, undecided } from '../expected.ts';
import type { Line } from '../line.ts';

const seats = ['H2', 'H9', 'R4'] as const;

/** Cleaning, breaking a bite, and everything that goes on under the head: what leaving it out comes to. */
export const seating: readonly Line[] = [
  { keys: ['clean boss'], expected: costs('technique', 0.5, 'rubber on rust leaks') },
  { keys: ['clean pipe'], expected: costs('technique', 0.5, 'scale under a chain crushes and gives') },
  {
    keys: ['plug.turn back'],
    expected: costs('technique', 0.5, 'a plug that was never broken loose may hold the rod'),
  },
  { keys: ['plug.turn on'], expected: costs('technique', 0.5, 'a plug left cracked masks the proof') },
  {
    keys: ['tee.turn back'],
    expected: costs('technique', 0.5, 'a tee that was never broken loose may hold the rod'),
  },
  { keys: ['tee.turn on'], expected: costs('technique', 0.5, 'a tee left cracked masks the proof') },
  { keys: ['keeper.turn back', 'keeper.turn on'], expected: critical('the new keeper is two wrenches tight') },
  {
    keys: [
      'piece.place chain', 'piece.place seatRing', 'piece.place saddle', 'piece.place cupGasket',
      'piece.place splitCollar', 'chain.hook on', 'piece.place isolationValve', 'piece.place lowerSpool',
      'piece.place upperSpool', 'piece.place testHead', 'collarBolt.turn on',
    ],
    toward: seats,
    expected: critical('the chamber cannot be closed and proved without it'),
  },
  {
    keys: ['piece.place cradleBlock'],
    expected: costs('kit', 1, 'a chain round a small main bends over nothing'),
  },
  {
    keys: ['tensioner.turn on'],
    toward: seats,
    fromEnd: [1],
    expected: costs('technique', 0.5, 'tapped links give, and nobody drew them up again'),
  },
  {
    keys: ['tensioner.turn on'],
    toward: seats,
    expected: undecided('what the other pulls come to, the proof says'),
  },
  { keys: ['chain.tap'], toward: seats, expected: harmless('the links are tapped once all the same') },
  {
    keys: ['valve.turn on', 'valve.turn back'],
    toward: ['H2'],
    inStage: [1],
    expected: costs('technique', 0.5, 'a valve that was never worked is trusted as the only wall'),
  },
  {
    keys: ['valve.turn on', 'valve.turn back'],
    toward: ['H9', 'R4'],
    inStage: [1],
    expected: harmless('the same valve was worked before the first seat'),
  },
]; // prettier-ignore

/** From the head's vent to the signature every step is part of the proof. */
export const proving: readonly Line[] = [
  {
    keys: ['vent.turn on'],
    toward: ['H9'],
    inStage: [2],
    expected: harmless('it was watched for a rise before any air went in, and is vented before the head comes off'),
  },
  {
    keys: ['vent.turn back'],
    toward: ['H9'],
    inStage: [3],
    expected: harmless('it was watched for a rise before any air went in, and is vented before the head comes off'),
  },
  {
    keys: ['gauge.zero head'],
    toward: ['H9', 'R4'],
    expected: harmless('it was zeroed before the first proof'),
  },
  {
    keys: ['vent.turn back', 'vent.turn on', 'valve.turn on', 'valve.turn back', 'pump.stroke', 'gauge.read head'],
    toward: seats,
    expected: critical('the proof lacks one of its parts'),
  },
  {
    keys: ['gauge.zero head'],
    toward: seats,
    expected: costs('holdPoints', 1, 'a figure from a gauge that nobody zeroed'),
  },
  {
    keys: ['gauge.read main'],
    toward: [...seats, 'R1', 'R3', 'R6', 'H12'],
    expected: harmless('it is read again within the hour'),
  },
  { keys: ['look chains'], expected: harmless('leak fluid and the gauge say the same') },
]; // prettier-ignore
