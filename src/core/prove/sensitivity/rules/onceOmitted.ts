import type { Act } from '../acts.ts';
import { costs, costsIn, critical, harmless, type Expected } from './expected.ts';
import { firstFitting, saidBy, type Line } from './line.ts';

/** A joint under proof has fluid at the low stage and at full pressure; only the second finds what a gauge misses. */
const underProof = (place: string): readonly Line[] => [
  {
    keys: [`leakFluid.apply ${place}`],
    toward: ['H2', 'H9', 'R4'],
    inStage: [1],
    expected: harmless('it is looked at again at full proof'),
  },
  {
    keys: [`leakFluid.apply ${place}`],
    toward: ['H2', 'H9', 'R4'],
    inStage: [2],
    expected: critical('a weep passes the gauge'),
  },
];

/** The first line that fits holds. Proving the second chamber asks what proving the first does. */
const lines: readonly Line[] = [
  { keys: ['gauge.read main'], toward: ['H1'], expected: critical('the pressure was taken from the tag') },
  {
    keys: ['gauge.read main'],
    toward: ['H10'],
    expected: harmless('it was read before the second proof, within the age allowed'),
  },
  {
    keys: ['gauge.read head'],
    toward: ['H2', 'H9', 'R4'],
    inStage: [3],
    expected: critical('the hold has no end reading'),
  },
  {
    keys: ['detector.read hole'],
    toward: ['H1'],
    expected: costs('holdPoints', 1, 'nobody tried the air first'),
  },
  { keys: ['detector.read hole'], toward: ['H7'], expected: critical('the saw in air that nobody tried') },
  {
    keys: ['detector.read hole'],
    toward: ['H10'],
    expected: costs('holdPoints', 1, 'the tee opens into untried air'),
  },
  {
    keys: ['detector.read hole'],
    toward: ['H12'],
    expected: costs('holdPoints', 1, 'nobody saw the hole at zero before it was closed'),
  },
  { keys: ['look boss'], toward: ['H1'], expected: critical('the first seat was never looked at') },
  { keys: ['look boss'], toward: ['H2'], expected: harmless('it was looked at before the first wrench') },
  { keys: ['look coupling'], toward: ['H1'], expected: costs('holdPoints', 1, 'rust was not looked for') },
  { keys: ['look coupling'], toward: ['H2'], expected: harmless('it was looked at before the first wrench') },
  {
    keys: ['look downBore'],
    toward: ['H3'],
    expected: costsIn(['holdPoints', 'abnormal'], 1, 'chips under the stopper'),
  },
  { keys: ['look downBore'], toward: ['H5'], expected: costs('holdPoints', 1, 'a stopper across the port') },
  {
    keys: ['look downBore'],
    toward: ['H11', 'R2', 'R5'],
    expected: critical('nobody saw the threads, or the plug square and full in'),
  },
  ...['seat', 'valveJoint', 'spoolJoint', 'topJoint'].flatMap(underProof),
  {
    keys: ['leakFluid.apply topJoint'],
    toward: ['H3', 'H11', 'R2', 'R5'],
    inStage: [1],
    expected: harmless('the chamber is vented: fluid shows nothing on a joint with nothing behind it'),
  },
  {
    keys: ['leakFluid.apply topJoint'],
    toward: ['H11', 'R5'],
    fromEnd: [1],
    expected: harmless('the coupling is closed: fluid shows nothing on a joint with nothing behind it'),
  },
  {
    keys: ['leakFluid.apply topJoint'],
    toward: ['H5', 'H6'],
    expected: harmless('the chamber is stopped and bled: fluid shows nothing'),
  },
  {
    keys: ['leakFluid.apply topJoint'],
    toward: ['R5'],
    inStage: [2],
    expected: harmless('the stopper still holds: fluid shows nothing on a joint with nothing behind it'),
  },
  {
    keys: ['leakFluid.apply topJoint'],
    toward: ['H3', 'H4', 'H11', 'R2', 'R5'],
    expected: costs('technique', 0.25, 'a new joint above the valve'),
  },
  { keys: ['listen'], toward: ['H5'], expected: costs('holdPoints', 1, 'the quiet minute was not kept') },
  { keys: ['listen'], toward: ['H7'], expected: critical('nobody watched the pilot for its minute') },
  { keys: ['clean coupling'], expected: harmless('the other cleaning leaves bare metal') },
];

/** What leaving out one act of several of its key must cost, or null where nothing is written. */
export function whenOnceOmitted(act: Act): Expected | null {
  const line = firstFitting(lines, act);
  return line === null ? null : saidBy(line);
}
