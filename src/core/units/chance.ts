/** A generator of chance: plain numbers, so that it can be kept inside a run and copied with it. */
export interface Generator {
  readonly state: number;
}

/** A generator begun from a seed; only the low 32 bits of the seed count. */
export function seedGenerator(seed: number): Generator {
  return { state: mix(seed ^ 0x9e3779b9) };
}

/** One draw in [0, 1) and the generator that makes the next one. The one given is not changed. */
export function drawUniform(generator: Generator): { value: number; generator: Generator } {
  const state = (generator.state + 0x6d2b79f5) | 0;
  return { value: unit(mix(state)), generator: { state } };
}

/** One draw from 0 up to and not including `count`. */
export function drawInteger(generator: Generator, count: number): { value: number; generator: Generator } {
  const draw = drawUniform(generator);
  return { value: Math.min(count - 1, Math.floor(draw.value * count)), generator: draw.generator };
}

/**
 * Noise in [-1, 1) that is a pure function of seed, name and time bucket. An instrument reads it without drawing
 * from anything, so that looking twice, or not looking, changes nothing else in the run.
 */
export function hashNoise(seed: number, key: string, bucket: number): number {
  let hash = mix(seed ^ 0x85ebca6b);
  for (let i = 0; i < key.length; i += 1) hash = mix(Math.imul(hash, 31) + key.charCodeAt(i));
  const whole = Math.floor(bucket);
  hash = mix(hash ^ (whole | 0));
  hash = mix(hash ^ (Math.floor(whole / 4294967296) | 0));
  return 2 * unit(hash) - 1;
}

/** Spreads 32 bits so that neighbours end far apart. */
function mix(bits: number): number {
  let h = bits | 0;
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d);
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b);
  return (h ^ (h >>> 16)) | 0;
}

function unit(bits: number): number {
  return (bits >>> 0) / 4294967296;
}
