import { expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { digestOf, ENGINE } from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';

/**
 * The steady crew's whole job on the first exercise, pinned beside the engine's name. When a law, a constant
 * or the exercise moves this digest, records made before read differently: raise ENGINE, then pin the new one.
 */
const pinned = {
  engine: 'stillmain 0.3.0',
  digest: '713e9a282ccc62a29ce4f18b69250d50e5fca874e76309f9ac7d5b1ba5776e74',
};

it('the engine keeps its name only as long as it keeps its bits', () => {
  const { run } = drive(exercise(), steady);
  expect({ engine: ENGINE, digest: digestOf(run) }).toEqual(pinned);
});
