import { burstOf } from './bursts.ts';
import { alarmHz, type Lasting, type LastingSound, type Passing, type Side, type Sound } from './sounds.ts';

/** What plays sounds on this machine. */
export interface Ear {
  /** Brings the lasting sounds to what is heard now and plays the passing ones once. */
  play(sounds: readonly Sound[]): void;
  /** Share of full loudness, 0 to 1. */
  setVolume(volume: number): void;
  /** Falls silent and lets the device go. */
  close(): void;
}

/** Loudest gain of anything, so that several at once do not clip. */
const fullGain = 0.5;
const panOf: Readonly<Record<Side, number>> = { left: -0.7, middle: 0, right: 0.7, below: 0 };

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

/** A sound that goes on: its loudness and pitch are led to what they are to be, its beat stays. */
interface Voice {
  lead(sound: Lasting | undefined): void;
}

/** Opens the ear. Call it from a press or a key: browsers play nothing before one. */
export function openEar(volume: number): Ear {
  const context = new AudioContext();
  const master = context.createGain();
  master.gain.value = volume;
  master.connect(context.destination);
  const buffer = noise(context);
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.loop = true;
  source.start();

  const towards = (param: AudioParam, value: number): void =>
    void param.setTargetAtTime(value, context.currentTime, 0.05);

  function placed(from: Side): AudioNode {
    const pan = context.createStereoPanner();
    pan.pan.value = panOf[from];
    pan.connect(master);
    return pan;
  }

  function hiss(from: Side): Voice {
    const band = context.createBiquadFilter();
    band.type = 'bandpass';
    band.Q.value = 0.7;
    const gain = context.createGain();
    gain.gain.value = 0;
    source.connect(band).connect(gain).connect(placed(from));
    return {
      lead(sound) {
        towards(gain.gain, (sound?.share ?? 0) * fullGain);
        if (sound !== undefined) towards(band.frequency, sound.pitchHz);
      },
    };
  }

  function alarm(kind: keyof typeof alarmHz): Voice {
    const tone = context.createOscillator();
    tone.type = 'square';
    const beat = context.createOscillator();
    beat.type = 'square';
    beat.frequency.value = alarmHz[kind];
    const gate = context.createGain();
    gate.gain.value = 0.5;
    const half = context.createGain();
    half.gain.value = 0.5;
    beat.connect(half).connect(gate.gain);
    const gain = context.createGain();
    gain.gain.value = 0;
    tone.connect(gate).connect(gain).connect(placed('left'));
    tone.start();
    beat.start();
    return {
      lead(sound) {
        towards(gain.gain, (sound?.share ?? 0) * 0.12);
        if (sound !== undefined) tone.frequency.value = sound.pitchHz;
      },
    };
  }

  const voices: Readonly<Record<LastingSound, Voice>> = {
    'hiss.bleed': hiss('right'),
    'hiss.vent': hiss('middle'),
    'hiss.hole': hiss('below'),
    'alarm.low': alarm('alarm.low'),
    'alarm.high': alarm('alarm.high'),
  };

  /** One stroke after the other, each a burst of noise through its band, dying away. */
  function strike(sound: Passing): void {
    const { pitchHz, width, lastsS, apartS } = burstOf[sound.kind];
    const to = placed(sound.from);
    for (let stroke = 0; stroke < sound.strokes; stroke += 1) {
      const atS = context.currentTime + stroke * apartS;
      const burst = context.createBufferSource();
      burst.buffer = buffer;
      const band = context.createBiquadFilter();
      band.type = 'bandpass';
      band.frequency.value = pitchHz;
      band.Q.value = width;
      const gain = context.createGain();
      gain.gain.setValueAtTime(sound.share * fullGain * Math.sqrt(width), atS);
      gain.gain.exponentialRampToValueAtTime(0.0001, atS + lastsS);
      burst.connect(band).connect(gain).connect(to);
      burst.start(atS, (stroke * 0.137) % 0.8);
      burst.stop(atS + lastsS);
    }
  }

  return {
    play(sounds) {
      const going = new Map(sounds.filter((sound) => sound.lasts).map((sound) => [sound.kind, sound]));
      for (const [kind, voice] of Object.entries(voices)) voice.lead(going.get(kind as LastingSound));
      for (const sound of sounds) if (!sound.lasts) strike(sound);
    },
    setVolume(next) {
      towards(master.gain, next);
    },
    close() {
      void context.close();
    },
  };
}
