import {
  cleanPlaces,
  detectorPlaces,
  gauges,
  holdPointIds,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
  oilPlaces,
  recordFields,
  siteTasks,
  type Action,
  type ActionKind,
} from '../../core/rig/index.ts';
import { drawUniform, seedGenerator, type Generator } from '../../core/units/index.ts';

/** A seeded source of chance that remembers where it is. The same seed draws the same in every engine. */
export class Chance {
  private generator: Generator;
  constructor(seed: number) {
    this.generator = seedGenerator(seed);
  }
  /** From low up to high. */
  between(low: number, high: number): number {
    const drawn = drawUniform(this.generator);
    this.generator = drawn.generator;
    return low + (high - low) * drawn.value;
  }
  /** A whole number from 0 up to and not including count. */
  below(count: number): number {
    return Math.min(count - 1, Math.floor(this.between(0, count)));
  }
  pick<T>(from: readonly T[]): T {
    return from[this.below(from.length)];
  }
  /** True so often. */
  now(share: number): boolean {
    return this.between(0, 1) < share;
  }
}

type Draw<K extends ActionKind> = (chance: Chance, kit: readonly string[]) => Extract<Action, { kind: K }>;

/** Any act of each kind, likely or mad, within what an action may say. A new kind without one does not compile. */
const draws: { readonly [K in ActionKind]: Draw<K> } = {
  'site.do': (c) => ({ kind: 'site.do', task: c.pick(siteTasks) }),
  'detector.bump': () => ({ kind: 'detector.bump' }),
  'detector.read': (c) => ({ kind: 'detector.read', where: c.pick(detectorPlaces) }),
  'gauge.zero': (c) => ({ kind: 'gauge.zero', gauge: c.pick(gauges) }),
  'gauge.read': (c) => ({ kind: 'gauge.read', gauge: c.pick(gauges) }),
  look: (c) => ({ kind: 'look', at: c.pick(lookPlaces) }),
  listen: () => ({ kind: 'listen' }),
  measure: (c) => ({ kind: 'measure', what: c.pick(measures) }),
  clean: (c) => ({ kind: 'clean', at: c.pick(cleanPlaces) }),
  'leakFluid.apply': (c) => ({ kind: 'leakFluid.apply', at: c.pick(leakPlaces), watchS: c.between(1, 60) }),
  mark: (c) => ({ kind: 'mark', at: c.pick(markPlaces) }),
  'piece.inspect': (c, kit) => ({ kind: 'piece.inspect', piece: c.pick(kit) }),
  'piece.reject': (c, kit) => ({ kind: 'piece.reject', piece: c.pick(kit) }),
  'oil.apply': (c) => ({ kind: 'oil.apply', at: c.pick(oilPlaces) }),
  'piece.clean': (c, kit) => ({ kind: 'piece.clean', piece: c.pick(kit) }),
  'bleed.clear': () => ({ kind: 'bleed.clear' }),
  'piece.place': (c, kit) => ({ kind: 'piece.place', piece: c.pick(kit), holdBack: c.now(0.5) }),
  'piece.remove': (c, kit) => ({ kind: 'piece.remove', piece: c.pick(kit), holdBack: c.now(0.5) }),
  'chain.hook': (c) => ({ kind: 'chain.hook', chain: c.below(2), hooked: c.now(0.5) }),
  'chain.tap': (c) => ({ kind: 'chain.tap', chain: c.below(2) }),
  'tensioner.turn': (c) => ({
    kind: 'tensioner.turn',
    chain: c.below(2),
    side: c.pick(['left', 'right'] as const),
    turns: c.between(-1, 1),
  }),
  'valve.turn': (c) => ({ kind: 'valve.turn', angleRad: c.between(-1.6, 1.6) }),
  'vent.turn': (c) => ({ kind: 'vent.turn', open: c.between(-1, 1) }),
  'pump.stroke': (c) => ({ kind: 'pump.stroke', strokes: 1 + c.below(10) }),
  'bleed.turn': (c) => ({ kind: 'bleed.turn', angleRad: c.between(-1.6, 1.6) }),
  'hose.lead': (c) => ({ kind: 'hose.lead', outlet: c.pick(['inHole', 'away'] as const) }),
  'rod.fit': (c, kit) => ({ kind: 'rod.fit', tip: c.now(0.2) ? null : c.pick(kit) }),
  'rod.load': (c, kit) => ({ kind: 'rod.load', piece: c.now(0.2) ? null : c.pick(kit) }),
  'rod.hold': (c) => ({ kind: 'rod.hold', held: c.now(0.5) }),
  'rod.move': (c) => ({ kind: 'rod.move', lengthM: c.between(-0.5, 0.5) }),
  'rod.turn': (c) => ({ kind: 'rod.turn', turns: c.between(-8, 8) }),
  'innerRod.turn': (c) => ({ kind: 'innerRod.turn', turns: c.between(-10, 10) }),
  'collar.set': (c) => ({ kind: 'collar.set', travelM: c.now(0.3) ? null : c.between(0, 0.5) }),
  'plug.turn': (c) => ({ kind: 'plug.turn', turns: c.between(-2, 2), holdBack: c.now(0.5) }),
  'tee.turn': (c) => ({ kind: 'tee.turn', turns: c.between(-2, 2), holdBack: c.now(0.5) }),
  'keeper.turn': (c) => ({ kind: 'keeper.turn', turns: c.between(-1, 1), holdBack: c.now(0.5) }),
  'testSet.join': (c) => ({ kind: 'testSet.join', to: c.pick(['bench', 'line', null]) }),
  'testSet.pump': (c) => ({ kind: 'testSet.pump', strokes: 1 + c.below(60) }),
  'testSet.vent': (c) => ({ kind: 'testSet.vent', open: c.between(-1, 1) }),
  'temperature.read': () => ({ kind: 'temperature.read' }),
  'riser.turn': (c) => ({ kind: 'riser.turn', open: c.between(-1, 1) }),
  'riser.read': () => ({ kind: 'riser.read' }),
  'keeper.pull': (c) => ({ kind: 'keeper.pull', torqueNm: c.between(1, 400), holdBack: c.now(0.5) }),
  'sealant.apply': (c, kit) => ({ kind: 'sealant.apply', piece: c.pick(kit) }),
  'bond.clamp': (c) => ({
    kind: 'bond.clamp',
    end: c.pick(['tee', 'service'] as const),
    clamped: c.now(0.5),
  }),
  'branch.cut': (c) => ({ kind: 'branch.cut', part: c.pick(['pilot', 'plugPilot', 'through'] as const) }),
  'tee.trim': (c) => ({ kind: 'tee.trim', how: c.pick(['saw', 'dress', 'file'] as const) }),
  'gaugeRing.try': () => ({ kind: 'gaugeRing.try' }),
  'service.purge': () => ({ kind: 'service.purge' }),
  'collarBolt.turn': (c) => ({ kind: 'collarBolt.turn', bolt: c.below(2), turns: c.between(-4, 4) }),
  'record.write': (c) => ({
    kind: 'record.write',
    field: c.pick(recordFields),
    value: `${c.below(1000)} “yard”`,
  }),
  sign: (c) => ({ kind: 'sign', holdPoint: c.pick(holdPointIds) }),
  withdraw: (c) => ({ kind: 'withdraw', holdPoint: c.pick(holdPointIds) }),
  refer: () => ({ kind: 'refer', reason: 'other' }),
  'main.isolate': () => ({ kind: 'main.isolate' }),
  leaveHole: () => ({ kind: 'leaveHole' }),
  finish: () => ({ kind: 'finish' }),
};

/** Acts that end a run or take its gas away: drawn seldom, so that most runs go on. */
const last: ReadonlySet<ActionKind> = new Set(['refer', 'main.isolate', 'leaveHole', 'finish']);
const kinds = Object.keys(draws) as ActionKind[];

/** One act at random; ending acts one time in a hundred of their share. */
export function drawAction(chance: Chance, kit: readonly string[]): Action {
  let kind = chance.pick(kinds);
  if (last.has(kind) && !chance.now(0.01)) kind = 'valve.turn';
  return draws[kind](chance, kit);
}
