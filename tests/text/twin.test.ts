import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { read, type RunState } from '../../src/core/run/index.ts';
import { twin, type TwinMode, type TwinPart } from '../../src/text/index.ts';
import { exercise } from '../scenario/exercise.ts';

const moments: RunState[] = [];
drive(exercise(), steady, (run) => moments.push(run));
const told = (run: RunState, mode: TwinMode = 'assessment'): readonly TwinPart[] =>
  twin(run, read(run), mode, 'si');
const lines = (parts: readonly TwinPart[]) => parts.flatMap((part) => part.lines);
const first = (is: (run: RunState) => boolean): RunState => {
  const found = moments.find(is);
  if (!found) throw new Error('the job has no such moment');
  return found;
};
const top = (run: RunState) => run.rig.stack.at(-1)?.kind;

describe('the text twin', () => {
  it('has plain whole sentences at every moment of the job, in both modes', () => {
    const seen = new Set<string>();
    for (const run of moments.filter((_, i) => i % 7 === 0)) {
      for (const mode of ['practice', 'assessment'] as const) {
        for (const part of told(run, mode)) {
          expect(part.heading).toMatch(/^[A-Z]/);
          expect(part.lines.length).toBeGreaterThan(0);
          for (const line of part.lines) seen.add(line);
        }
      }
    }
    for (const line of seen) {
      expect(line).toMatch(/^[A-Z].*\.$/);
      expect(line).not.toMatch(/undefined|NaN|null|\{|\}|[a-z]{2}[A-Z]/);
    }
    expect(seen.size).toBeGreaterThan(80);
  });

  it('tells in practice what is inside, and in assessment does not', () => {
    const stopped = first((run) => run.rig.stopper.at === 'set');
    expect(
      lines(told(stopped, 'practice')).some((line) => /^Bore stopper \d\.\d mm below the port/.test(line)),
    ).toBe(true);
    expect(lines(told(stopped)).join(' ')).not.toMatch(/Bore stopper \d|past snug\.|Gas into the hole/);
  });

  it('says in assessment nothing that hangs on a truth a crew cannot have', () => {
    const run = first((r) => r.rig.stopper.at === 'set' && top(r) === 'rodBarrel');
    const otherwise: RunState = {
      ...run,
      rig: { ...run.rig, stopper: { ...run.rig.stopper, belowPortM: -0.01, torqueNm: 0.1, tiltRad: 0.3 } },
      ledger: { ...run.ledger, toHoleMol: 99, throughBleedMol: 99 },
      air: { ...run.air, gasFraction: 0.2, peakLelShare: 3 },
      gas: { ...run.gas, gasMol: run.gas.gasMol.map(() => 1) },
    };
    const readings = read(run);
    expect(twin(otherwise, readings, 'assessment')).toEqual(twin(run, readings, 'assessment'));
    expect(twin(otherwise, readings, 'practice')).not.toEqual(twin(run, readings, 'practice'));
  });

  it('names what stands on the main from below upward', () => {
    const run = first((r) => r.rig.saddle.on === 'coupling' && top(r) === 'testHead');
    const rig = told(run).find((part) => part.heading.startsWith('The rig'));
    const text = rig?.lines.join('\n') ?? '';
    const order = [
      'Cup gasket 1',
      'Split collar 1',
      'Saddle over',
      'Chain no. 1',
      'Lower spool',
      'Isolation valve',
      'Upper spool',
      'Test head',
    ];
    const places = order.map((word) => text.indexOf(word));
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('says how the rod stands, who holds it and how it pushes', () => {
    const run = first((r) => r.rig.plug.at === 'rod' && r.rig.rod.held && r.rig.valve.openRad > 1.5);
    const rod = lines(told(run).filter((part) => part.heading === 'The rod')).join(' ');
    expect(rod).toMatch(/On the tip: top plug\..*held by hand\..*It pushes up with 2\d N\./);
  });

  it('tells the hiss while it lasts and quiet when it is over', () => {
    const hissing = first((r) => read(r).bleedHeard);
    const ear = (run: RunState) => lines(told(run).filter((part) => part.heading === 'What is heard'));
    expect(ear(hissing)[0]).toMatch(/^The bleed hisses, about \d+ dB\.$/);
    expect(ear(moments[0])).toEqual(['Nothing above the street.']);
  });

  it('is the same state in the other units', () => {
    const run = moments[moments.length - 1];
    const us = lines(twin(run, read(run), 'assessment', 'us'));
    const si = lines(twin(run, read(run), 'assessment', 'si'));
    expect(us).toHaveLength(si.length);
    expect(us.some((line) => line.includes('psig'))).toBe(true);
    expect(si.some((line) => line.includes('kPa'))).toBe(true);
  });
});
