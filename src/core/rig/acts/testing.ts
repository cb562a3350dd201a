import { constants } from '../../catalogue/index.ts';
import type { FactBody } from '../facts.ts';
import { riserReading, temperatureReading } from '../instruments.ts';
import { houseCell, joined, testedGaugePa } from '../line.ts';
import { mainGaugePa } from '../mainFeed.ts';
import type { Sense } from '../sense.ts';
import type { KitPiece, RigState } from '../state.ts';
import { stopperHoldsN, stopperThrustN } from '../stopping.ts';
import { did, tidy, withPiece, type Acts, type Outcome } from './outcome.ts';

/** Test set, thermometer and riser: what shows that the new tee, and then its line, hold. */
export const testingActs: Acts<
  'testSet.join' | 'testSet.pump' | 'testSet.vent' | 'temperature.read' | 'riser.turn' | 'riser.read'
> = {
  'testSet.join': (rig, { to }) => (to === null ? takeOff(rig) : join(rig, to)),
  'testSet.pump': (rig, { strokes }, sense) => {
    if (rig.testSet.on === null) return 'notFitted';
    // told when the strokes are done, with the pressure they have made: the run raises it
    const pumpUntilS = sense.atS + strokes / constants.pumpStrokesPerS.value;
    return did({ ...rig, testSet: { ...rig.testSet, pumpUntilS, strokes } });
  },
  'testSet.vent': (rig, { open }, sense) => {
    if (rig.testSet.on === null) return 'notFitted';
    const ventOpen = Math.max(0, Math.min(1, tidy(rig.testSet.ventOpen + open)));
    if (ventOpen === rig.testSet.ventOpen) return 'atStop';
    return did(
      { ...rig, testSet: { ...rig.testSet, ventOpen } },
      { fact: 'testSet.vented', open: ventOpen, gaugePa: testedGaugePa(rig, sense) },
    );
  },
  'temperature.read': (rig, _action, sense) =>
    did(rig, { fact: 'temperature.read', ...temperatureReading(rig, sense) }),
  'riser.turn': (rig, { open }, sense) => {
    if (rig.line.riser === null) return 'notFitted';
    const riserOpen = Math.max(0, Math.min(1, tidy(rig.line.riserOpen + open)));
    if (riserOpen === rig.line.riserOpen) return 'atStop';
    return did(
      { ...rig, line: { ...rig.line, riserOpen } },
      { fact: 'riser.turned', open: riserOpen, gaugePa: sense.gaugePa(houseCell(rig.job)) },
    );
  },
  'riser.read': (rig, _action, sense) => {
    if (rig.line.riser === null) return 'notFitted';
    return did(rig, { fact: 'riser.read', ...riserReading(rig, sense) });
  },
};

function boardOf(rig: RigState, kind: KitPiece['kind']): KitPiece | null {
  return Object.values(rig.kit).find((p) => p.kind === kind && p.where === 'board' && !p.rejected) ?? null;
}

function join(rig: RigState, to: 'bench' | 'line'): Outcome {
  if (rig.testSet.on !== null) return 'alreadyFitted';
  const set = boardOf(rig, 'testSet');
  if (set === null) return 'notOnBoard';
  const on = withPiece(rig, set.id, { where: 'rig' });
  const testSet = { on: to, ventOpen: 0, pumpUntilS: 0, strokes: 0 } as const;
  const facts: FactBody[] = [
    { fact: 'piece.placed', piece: set.id, fits: true },
    { fact: 'testSet.joined', to },
  ];
  if (to === 'line') {
    const there = rig.line.laid || (rig.job.system.renewal?.line === 'old' && rig.branch.cut === 'through');
    if (!there) return 'nothingBelow';
    return rig.line.riser === null ? did({ ...on, testSet }, ...facts) : 'occupied';
  }
  const tee = boardOf(rig, 'renewalTee');
  if (tee === null || rig.renewal.at !== 'board') return 'notOnBoard';
  return did({ ...on, testSet, renewal: { ...rig.renewal, piece: tee.id } }, ...facts);
}

function takeOff(rig: RigState): Outcome {
  if (rig.testSet.on === null) return 'notFitted';
  const set = Object.values(rig.kit).find((p) => p.kind === 'testSet' && p.where === 'rig');
  const off = set === undefined ? rig : withPiece(rig, set.id, { where: 'board' });
  return did(
    { ...off, testSet: { on: null, ventOpen: 0, pumpUntilS: 0, strokes: 0 } },
    { fact: 'testSet.joined', to: null },
  );
}

/** The strokes are done. Where the line is joined to the tee, what they made stands on the stopper as well. */
export function testSetPumped(rig: RigState, sense: Sense): { rig: RigState; facts: readonly FactBody[] } {
  const { on, strokes } = rig.testSet;
  const done: RigState = { ...rig, testSet: { ...rig.testSet, strokes: 0 } };
  if (on === null) return { rig: done, facts: [] };
  const onStopper = on === 'line' && joined(rig) && rig.stopper.at === 'set';
  const downN = -stopperThrustN(rig, mainGaugePa(rig, sense), sense.gaugePa('barrel'));
  const fact: FactBody = {
    fact: 'testSet.pumped',
    strokes,
    on,
    gaugePa: testedGaugePa(rig, sense),
    onStopper,
    thrustN: onStopper ? Math.max(0, downN) : 0,
    holdsN: onStopper ? stopperHoldsN(rig, sense.atS) : 0,
  };
  return { rig: done, facts: [fact] };
}
