import type { Readings } from '../core/run/index.ts';

/** What the ear would get, played: a hiss for the bleed, a lower one for the hole, and the detector's alarm. */
export interface Ear {
  /** Brings the sound to what is heard now. */
  hear(readings: Readings): void;
  /** Falls silent and lets the device go. */
  close(): void;
}

/** Street noise, dB: what is no louder is not played. Loudest played: full gain. */
const streetDb = 45;
const loudestDb = 115;
const loudestGain = 0.5;

/** Gain for a level at the ear: none in the street's noise, then even steps of loudness. */
export function gainOf(levelDb: number, heard: boolean): number {
  if (!heard) return 0;
  const share = Math.max(0, Math.min(1, (levelDb - streetDb) / (loudestDb - streetDb)));
  return loudestGain * (0.04 + 0.96 * share * share);
}

/** White noise of one second, the same every time. */
function noise(context: AudioContext): AudioBuffer {
  const buffer = context.createBuffer(1, context.sampleRate, context.sampleRate);
  const samples = buffer.getChannelData(0);
  let seed = 20517;
  for (let i = 0; i < samples.length; i += 1) {
    seed = (seed * 1664525 + 1013904223) >>> 0;
    samples[i] = seed / 2147483648 - 1;
  }
  return buffer;
}

/** Opens the ear. Call it from a press: browsers play nothing before one. */
export function openEar(): Ear {
  const context = new AudioContext();
  const source = context.createBufferSource();
  source.buffer = noise(context);
  source.loop = true;

  function hiss(frequencyHz: number, width: number): GainNode {
    const band = context.createBiquadFilter();
    band.type = 'bandpass';
    band.frequency.value = frequencyHz;
    band.Q.value = width;
    const gain = context.createGain();
    gain.gain.value = 0;
    source.connect(band).connect(gain).connect(context.destination);
    return gain;
  }

  const bleed = hiss(6000, 0.7);
  const hole = hiss(1800, 0.5);
  const beep = context.createOscillator();
  beep.type = 'square';
  const alarm = context.createGain();
  alarm.gain.value = 0;
  beep.connect(alarm).connect(context.destination);
  source.start();
  beep.start();

  const towards = (gain: AudioParam, value: number): void =>
    void gain.setTargetAtTime(value, context.currentTime, 0.05);

  return {
    hear(readings) {
      towards(bleed.gain, gainOf(readings.bleedDb, readings.bleedHeard));
      towards(hole.gain, gainOf(readings.holeDb, readings.holeHeard));
      beep.frequency.value = readings.alarm === 2 ? 2400 : 1600;
      const period = readings.alarm === 2 ? 0.5 : 1;
      towards(alarm.gain, readings.alarm > 0 && context.currentTime % period < period / 2 ? 0.06 : 0);
    },
    close() {
      void context.close();
    },
  };
}
