import { describe, expect, it } from 'vitest';
import { drive, hasty, steady } from '../../src/core/hands/index.ts';
import { begin, read, type RunState } from '../../src/core/run/index.ts';
import { alarmHz, hear, shareOf, strengthOf, type Moment, type Sound } from '../../src/sound/index.ts';
import { exercise } from '../scenario/exercise.ts';

const momentOf = (run: RunState): Moment => ({ readings: read(run), rig: run.rig });
const still = momentOf(begin(exercise()));
const withReadings = (more: Partial<Moment['readings']>): Moment => ({
  ...still,
  readings: { ...still.readings, ...more },
});
const now = (moment: Moment): readonly Sound[] => hear(moment, moment, []);

type Fact = RunState['facts'][number];
const after = (...facts: Fact[]): readonly Sound[] => hear(still, still, facts);
const tensioner = (torqueNm: number, side: 'left' | 'right' = 'left'): Fact => ({
  fact: 'tensioner.turned',
  atS: 0,
  chain: 0,
  side,
  turns: 0.2,
  torqueNm,
  legForceN: 800,
});

describe('the ear', () => {
  it('gets no sound at all where nothing flows and nothing happens', () => {
    expect(now(still)).toEqual([]);
    expect(now(withReadings({ bleedDb: -40, holeDb: -40 }))).toEqual([]);
  });

  it('is silent where a crew would hear nothing above the street', () => {
    expect(shareOf(44, false)).toBe(0);
    expect(shareOf(90, false)).toBe(0);
    expect(shareOf(45, true)).toBe(0);
    expect(now(withReadings({ bleedDb: 44, bleedHeard: false }))).toEqual([]);
  });

  it('hears a louder jet louder and never past its loudest', () => {
    const shares = [46, 60, 75, 90, 110, 140].map((level) => shareOf(level, true));
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(new Set(shares.slice(0, 5)).size).toBe(5);
    expect(shares[0]).toBeGreaterThan(0);
    expect(Math.max(...shares)).toBe(1);
  });

  it('hears a bleed just cracked as a whistle and a wide one as a roar', () => {
    const at = (openRad: number): Sound => {
      const moment = withReadings({ bleedDb: 90, bleedHeard: true });
      return now({ ...moment, rig: { ...moment.rig, bleed: { ...moment.rig.bleed, openRad } } })[0];
    };
    const [cracked, wide] = [at(0.1), at(Math.PI / 2)];
    expect(cracked).toMatchObject({ kind: 'hiss.bleed', from: 'right' });
    if (!cracked.lasts || !wide.lasts) throw new Error('a hiss lasts');
    expect(cracked.pitchHz).toBeGreaterThan(2 * wide.pitchHz);
  });

  it('hears gas in the hole from below, and the alarm in its two steps', () => {
    expect(now(withReadings({ holeDb: 80, holeHeard: true }))).toMatchObject([
      { kind: 'hiss.hole', from: 'below' },
    ]);
    expect(now(withReadings({ alarm: 1 }))).toMatchObject([{ kind: 'alarm.low' }]);
    expect(now(withReadings({ alarm: 2 }))).toMatchObject([{ kind: 'alarm.high' }]);
  });

  it('hears a tensioner on its own side, louder the tighter it is, and straining at the end', () => {
    const [loose, tight] = [after(tensioner(0.6))[0], after(tensioner(3.5, 'right'))[0]];
    expect(loose).toMatchObject({ kind: 'ratchet', from: 'left' });
    expect(tight).toMatchObject({ kind: 'ratchet.hard', from: 'right' });
    expect(tight.share).toBeGreaterThan(loose.share);
  });

  it('hears a crossed thread skip and a true one turn', () => {
    const closing = (crossed: boolean): Fact => ({
      fact: 'closing.turned',
      atS: 0,
      engagedTurns: 1,
      torqueNm: 20,
      crossed,
    });
    expect(after(closing(true))[0].kind).toBe('skip');
    expect(after(closing(false))[0].kind).toBe('thread');
  });

  it('calls sounds by four strengths in order', () => {
    expect([0.05, 0.3, 0.6, 0.95].map((share) => strengthOf({ share }))).toEqual([
      'faint',
      'soft',
      'clear',
      'loud',
    ]);
  });

  it('beeps no more than three times a second, the bound of WCAG 2.3.1 for what flashes with it (from memory)', () => {
    for (const perSecond of Object.values(alarmHz)) expect(perSecond).toBeLessThanOrEqual(3);
    expect(alarmHz['alarm.high']).toBeGreaterThan(alarmHz['alarm.low']);
  });
});

describe.each([
  ['steady', steady],
  ['hasty', hasty],
] as const)('the %s hand’s whole job, listened to', (name, hand) => {
  const heard: { readonly run: RunState; readonly sounds: readonly Sound[] }[] = [];
  let before: RunState | null = null;
  drive(exercise(), hand, (run) => {
    const facts = before === null ? [] : run.facts.slice(before.facts.length);
    heard.push({ run, sounds: hear(momentOf(before ?? run), momentOf(run), facts) });
    before = run;
  });

  it('hisses exactly while the readings say that it can be heard', () => {
    for (const { run, sounds } of heard) {
      const readings = read(run);
      const hisses = sounds.some(({ kind }) => kind === 'hiss.bleed' || kind === 'hiss.vent');
      expect(hisses, `at ${run.clockS}`).toBe(readings.bleedHeard && readings.bleedDb > 45);
      const blows = sounds.some(({ kind }) => kind === 'hiss.hole');
      expect(blows, `at ${run.clockS}`).toBe(readings.holeHeard && readings.holeDb > 45);
    }
  });

  it('keeps every sound within what can be played', () => {
    const all = heard.flatMap(({ sounds }) => sounds);
    expect(all.length).toBeGreaterThan(50);
    for (const sound of all) {
      expect(sound.share).toBeGreaterThan(0);
      expect(sound.share).toBeLessThanOrEqual(1);
    }
  });

  it('has the sounds of such a job', () => {
    const kinds = new Set(heard.flatMap(({ sounds }) => sounds.map(({ kind }) => kind)));
    const usual = ['hiss.bleed', 'ratchet', 'thread', 'handle', 'pump', 'touch', 'saw'] as const;
    const careful = ['knock', 'detent', 'free', 'slide'] as const;
    for (const kind of name === 'steady' ? [...usual, ...careful] : ['thread', 'handle']) {
      expect(kinds, kind).toContain(kind);
    }
  });
});
