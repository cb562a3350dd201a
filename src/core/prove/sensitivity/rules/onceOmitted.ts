import type { HoldPointId } from '../../../rig/index.ts';
import type { Act } from '../acts.ts';
import { costs, critical, harmless, type Expected } from './expected.ts';

/** One of several acts of a key: towards which hold point, which of them there, and what leaving only it out costs. */
interface OnceOmitted {
  readonly key: string;
  /** Any, where it is not said. */
  readonly toward?: readonly HoldPointId[];
  readonly inStage?: number;
  readonly expected: Expected;
}

/** A joint under proof has fluid at the low stage and at full pressure; only the second finds what a gauge misses. */
const underProof = (place: string): readonly OnceOmitted[] => [
  {
    key: `leakFluid.apply ${place}`,
    toward: ['H2', 'H9'],
    inStage: 1,
    expected: harmless('it is looked at again at full proof'),
  },
  {
    key: `leakFluid.apply ${place}`,
    toward: ['H2', 'H9'],
    inStage: 2,
    expected: critical('a weep passes the gauge'),
  },
];

/** The first line that fits holds. Proving the second chamber asks what proving the first does. */
const lines: readonly OnceOmitted[] = [
  { key: 'gauge.read main', toward: ['H1'], expected: critical('the pressure was taken from the tag') },
  {
    key: 'gauge.read main',
    toward: ['H10'],
    expected: harmless('it was read before the second proof, within the age allowed'),
  },
  {
    key: 'gauge.read head',
    toward: ['H2', 'H9'],
    inStage: 3,
    expected: critical('the hold has no end reading'),
  },
  {
    key: 'detector.read hole',
    toward: ['H1'],
    expected: costs('holdPoints', 2, 'nobody tried the air first'),
  },
  { key: 'detector.read hole', toward: ['H7'], expected: critical('the saw in air that nobody tried') },
  {
    key: 'detector.read hole',
    toward: ['H10'],
    expected: costs('holdPoints', 2, 'the tee opens into untried air'),
  },
  { key: 'look boss', toward: ['H1'], expected: critical('the first seat was never looked at') },
  { key: 'look boss', toward: ['H2'], expected: harmless('it was looked at before the first wrench') },
  { key: 'look coupling', toward: ['H1'], expected: costs('holdPoints', 2, 'rust was not looked for') },
  { key: 'look coupling', toward: ['H2'], expected: harmless('it was looked at before the first wrench') },
  { key: 'look downBore', toward: ['H3'], expected: costs('holdPoints', 1, 'chips under the stopper') },
  { key: 'look downBore', toward: ['H5'], expected: costs('holdPoints', 2, 'a stopper across the port') },
  { key: 'look downBore', toward: ['H11'], expected: critical('nobody saw the plug square and full in') },
  ...['seat', 'valveJoint', 'topJoint'].flatMap(underProof),
  {
    key: 'leakFluid.apply topJoint',
    toward: ['H3'],
    inStage: 1,
    expected: harmless('the chamber is vented: fluid shows nothing on a joint with nothing behind it'),
  },
  {
    key: 'leakFluid.apply topJoint',
    toward: ['H6'],
    expected: harmless('the chamber is stopped and bled: fluid shows nothing'),
  },
  {
    key: 'leakFluid.apply topJoint',
    toward: ['H11'],
    inStage: 1,
    expected: harmless('the chamber is vented after its proof: fluid shows nothing'),
  },
  {
    key: 'leakFluid.apply topJoint',
    toward: ['H3', 'H4', 'H5', 'H11'],
    expected: costs('technique', 0.25, 'a new joint above the valve'),
  },
  { key: 'listen', toward: ['H5'], expected: costs('holdPoints', 1, 'the quiet minute was not kept') },
  { key: 'listen', toward: ['H7'], expected: critical('nobody watched the pilot for its minute') },
  { key: 'clean coupling', expected: harmless('the other cleaning leaves bare metal') },
];

/** What leaving out one act of several of its key must cost, or null where nothing is written. */
export function whenOnceOmitted(act: Act): Expected | null {
  const line = lines.find(
    ({ key, toward, inStage }) =>
      key === act.key &&
      (toward === undefined || (act.toward !== null && toward.includes(act.toward))) &&
      (inStage === undefined || inStage === act.inStage),
  );
  return line?.expected ?? null;
}
