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
  digest: 'a4f22e87fcdb2494f920176bf059a60895d224ca20f772b652ee4f94c23e9015',
};

it('the engine keeps its name only as long as it keeps its bits', () => {
  const { run } = drive(exercise(), steady);
  expect({ engine: ENGINE, digest: digestOf(run) }).toEqual(pinned);
});
