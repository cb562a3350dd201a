import { describe as group, expect, it } from 'vitest';
import scenario from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { pieces, rodRange, stackGeometry, taperThreads } from '../../src/core/catalogue/index.ts';
import {
  act,
  setUp,
  stillAir,
  tipZM,
  type Action,
  type Job,
  type RigState,
} from '../../src/core/rig/index.ts';
import { describe, type ItemView, type SceneView } from '../../src/scene/index.ts';

const job = scenario.job as unknown as Job;
const g = stackGeometry({ mainNps: '4', teeSize: '1' });
const pitch = taperThreads['1'].pitchM;

/** Does it as a hand would; a hindrance fails the test with its name. */
function doing(rig: RigState, ...actions: Action[]): RigState {
  return actions.reduce((now, action) => {
    const outcome = act(now, action, stillAir);
    if (typeof outcome === 'string') throw new Error(`${JSON.stringify(action)} is hindered: ${outcome}`);
    return outcome.rig;
  }, rig);
}

const place = (piece: string): Action => ({ kind: 'piece.place', piece, holdBack: true });
const remove = (piece: string): Action => ({ kind: 'piece.remove', piece, holdBack: true });
const rodDown = (lengthM: number): Action => ({ kind: 'rod.move', lengthM });
const rodTurn = (turns: number): Action => ({ kind: 'rod.turn', turns });
const valve = (angleRad: number): Action => ({ kind: 'valve.turn', angleRad });
const fit = (tip: string): Action => ({ kind: 'rod.fit', tip });
const load = (piece: string | null): Action => ({ kind: 'rod.load', piece });
const hold: Action = { kind: 'rod.hold', held: true };
const tension = (chain: number, side: 'left' | 'right', turns: number): Action => ({ kind: 'tensioner.turn', chain, side, turns }); // prettier-ignore

interface Change {
  readonly before: (id: string) => ItemView;
  readonly after: (id: string) => ItemView;
  readonly from: SceneView;
  readonly to: SceneView;
}

type Check = (change: Change) => void;
type Row = readonly [says: string, actions: readonly Action[], check: Check];

const item = (view: SceneView) => (id: string) => {
  const found = view.items.find((i) => i.id === id);
  if (!found) throw new Error(`${id} is not in the picture`);
  return found;
};

const rises =
  (id: string, byM: number, turns?: number): Check =>
  ({ before, after }) => {
    expect(after(id).position[2] - before(id).position[2]).toBeCloseTo(byM, 6);
    if (turns !== undefined) expect(after(id).turns - before(id).turns).toBeCloseTo(turns, 6);
  };
const appears =
  (id: string, zM: number): Check =>
  ({ from, after }) => {
    expect(from.items.some((i) => i.id === id)).toBe(false);
    expect(after(id).position[2]).toBeCloseTo(zM, 6);
  };
const goes =
  (id: string): Check =>
  ({ before, to }) => {
    expect(before(id).id).toBe(id);
    expect(to.items.some((i) => i.id === id)).toBe(false);
  };
const opens =
  (id: string, joint: keyof ItemView['joints'], by: number): Check =>
  ({ before, after }) => {
    expect((after(id).joints[joint] ?? 0) - (before(id).joints[joint] ?? 0)).toBeCloseTo(by, 6);
  };
const all =
  (...checks: Check[]): Check =>
  (change) =>
    checks.forEach((check) => check(change));
const stays = (id: string): Check => rises(id, 0, 0);

const firstTop = (...heights: number[]) => heights.reduce((z, h) => z + h, g.firstSeatZM + 0.091);
const secondTop = (...heights: number[]) => heights.reduce((z, h) => z + h, g.secondSeatZM + 0.091);
const up1 = rodRange(firstTop(0.19)).upZM;
const socket = pieces.socket.dims('1').lengthM;
const holder = pieces.stopperHolder.dims().lengthM;
const quarter = Math.PI / 2;
const lean = (pieces.chain.dims().advancePerTurnM * 0.25) / 0.12;

/** The whole job in order; each row is one thing a hand does and what of it is to be seen, lengths in m. */
const rows: readonly Row[] = [
  [
    'the top plug backed off an eighth of a turn rises an eighth of a pitch, anticlockwise',
    [{ kind: 'plug.turn', turns: -0.125, holdBack: true }],
    rises('topPlug', pitch / 8, -0.125),
  ],
  [
    'and goes back as far when snugged',
    [{ kind: 'plug.turn', turns: 0.125, holdBack: true }],
    rises('topPlug', -pitch / 8, 0.125),
  ],
  [
    'a stroke of paint across plug and boss parts in two as the plug turns',
    [
      { kind: 'mark', at: 'plug' },
      { kind: 'plug.turn', turns: -0.125, holdBack: true },
    ],
    ({ from, to }) => {
      const strokes = (view: SceneView) => view.details.filter(({ id }) => /^mark-(plug|boss)$/.test(id));
      expect(strokes(from)).toEqual([]);
      expect(
        strokes(to)
          .map(({ id }) => id)
          .sort(),
      ).toEqual(['mark-boss', 'mark-plug']);
    },
  ],
  [
    'and meets again when it is snugged',
    [{ kind: 'plug.turn', turns: 0.125, holdBack: true }],
    rises('topPlug', -pitch / 8, 0.125),
  ],
  ['the seat ring lies on the boss', [place('seatRing-1')], appears('seatRing-1', g.bossZM)],
  ['the saddle stands on the ring', [place('saddle')], appears('saddle', g.bossZM + 0.011)],
  [
    'chains hang, then are hooked up',
    [place('chain-a'), place('chain-b'), { kind: 'chain.hook', chain: 0, hooked: true }],
    ({ from, to }) => {
      expect(from.chains).toHaveLength(0);
      expect(to.chains.map((c) => c.hooked)).toEqual([true, false]);
      expect(to.chains[0].xM).toBeGreaterThan(0);
      expect(to.chains[1].xM).toBeCloseTo(-to.chains[0].xM, 9);
    },
  ],
  [
    'a quarter turn on the right tensioner alone leans the saddle toward the service',
    [{ kind: 'chain.hook', chain: 1, hooked: true }, tension(0, 'right', 0.25), tension(1, 'right', 0.25)],
    ({ to, before, after }) => {
      expect(to.chains[0].rightTurns).toBeCloseTo(0.25, 9);
      expect(after('saddle').tiltRad - before('saddle').tiltRad).toBeCloseTo(lean, 6);
    },
  ],
  [
    'as much on the left brings it square again',
    [tension(0, 'left', 0.25), tension(1, 'left', 0.25)],
    ({ after, to }) => {
      expect(after('saddle').tiltRad).toBeCloseTo(0, 9);
      expect(to.chains[1].leftTurns).toBeCloseTo(0.25, 9);
      expect(after('seatRing-1').spec.squeeze).toBeGreaterThan(0);
    },
  ],
  ['the valve stands on the saddle', [place('isolationValve')], appears('isolationValve', firstTop())],
  ['its ball and handle turn with the hand', [valve(1)], opens('isolationValve', 'valveRad', 1)],
  ['the test head stands on the valve', [place('testHead')], appears('testHead', firstTop(0.19))],
  ['its vent lever turns', [{ kind: 'vent.turn', open: -1 }], opens('testHead', 'ventOpen', -1)],
  ['the head comes off', [remove('testHead')], goes('testHead')],
  [
    'the barrel goes on with rod and socket, fully up',
    [valve(-1), fit('socket-1'), place('rodBarrel')],
    all(appears('rodBarrel', firstTop(0.19)), appears('rod', up1), appears('socket-1', up1 - socket)),
  ],
  [
    'the bleed lever turns',
    [{ kind: 'bleed.turn', angleRad: quarter }],
    opens('rodBarrel', 'bleedRad', quarter),
  ],
  [
    'the hose is led away, out of the hole',
    [{ kind: 'hose.lead', outlet: 'away' }],
    ({ from, to }) => {
      expect(from.cables).toHaveLength(0);
      const end = to.cables[0].path[to.cables[0].path.length - 1];
      expect(end[2]).toBeGreaterThan(to.hole.floorZM + to.hole.depthM);
      expect(end[1]).toBeGreaterThan(0.5);
    },
  ],
  [
    'the rod goes down with its socket',
    [{ kind: 'bleed.turn', angleRad: -quarter }, valve(quarter), hold, rodDown(0.1)],
    all(rises('rod', -0.1), rises('socket-1', -0.1), stays('topPlug')),
  ],
  [
    'until it stands on the plug',
    [rodDown(0.4)],
    ({ after }) => expect(after('socket-1').position[2]).toBeCloseTo(g.plugShoulderZM, 6),
  ],
  [
    'two turns back raise plug, socket and rod together by two pitches',
    [rodTurn(-2)],
    all(rises('topPlug', 2 * pitch, -2), rises('rod', 2 * pitch, -2), rises('socket-1', 2 * pitch)),
  ],
  [
    'once free it rides on the socket',
    [rodTurn(-6), rodDown(-0.15)],
    ({ after }) => expect(after('topPlug').position[2]).toBeCloseTo(after('socket-1').position[2], 6),
  ],
  [
    'up above the ball, and out with the barrel',
    [rodDown(-0.3), valve(-quarter), remove('rodBarrel'), load(null)],
    all(goes('topPlug'), goes('rod'), goes('rodBarrel')),
  ],
  [
    'the stopper hangs on the holder',
    [fit('stopperHolder'), load('boreStopper-1'), place('rodBarrel')],
    all(appears('boreStopper-1', up1 - holder), appears('stopperHolder', up1 - holder)),
  ],
  [
    'the depth collar rides above the gland by the travel it is set to',
    [{ kind: 'collar.set', travelM: 0.35 }],
    appears('depthCollar', firstTop(0.19, 0.252, 0.046) + 0.35),
  ],
  [
    'and meets it when the rod is down',
    [valve(quarter), hold, rodDown(0.2), rodDown(0.2)],
    all(rises('depthCollar', -0.35), rises('boreStopper-1', -0.35)),
  ],
  [
    'the inner rod squeezes the rubber',
    [{ kind: 'innerRod.turn', turns: 3.6 }],
    ({ before, after }) => {
      expect(before('boreStopper-1').spec.squeeze).toBe(0);
      expect(after('boreStopper-1').spec.squeeze).toBe(1);
      expect(after('rod').joints.innerTurns).toBeCloseTo(3.6, 6);
    },
  ],
  [
    'let go, the stopper stays and the rod comes up',
    [rodTurn(0.25), { kind: 'collar.set', travelM: null }, rodDown(-0.2)],
    all(stays('boreStopper-1'), rises('rod', 0.2), goes('depthCollar')),
  ],
  [
    'the keeper goes down to the boss on its socket',
    [rodDown(-0.4), valve(-quarter), remove('rodBarrel'), place('upperSpool'), fit('socket-1'), load('keeperPlug-1'), place('rodBarrel'), valve(quarter), hold, rodDown(0.5)], // prettier-ignore
    appears('keeperPlug-1', g.plugShoulderZM + taperThreads['1'].madeUpM),
  ],
  [
    'three turns in take it down three pitches',
    [rodTurn(3)],
    all(rises('keeperPlug-1', -3 * pitch, 3), rises('rod', -3 * pitch, 3)),
  ],
  [
    'it stays in the tee when the socket is drawn off',
    [rodTurn(1.7), rodDown(-0.2)],
    all(rises('keeperPlug-1', -1.7 * pitch), rises('rod', 0.2 - 1.7 * pitch)),
  ],
  [
    'chains slackened and unhooked, the whole rig comes off',
    [rodDown(-0.5), valve(-quarter), remove('rodBarrel'), remove('upperSpool'), remove('isolationValve'), tension(0, 'left', -1), tension(0, 'right', -1), tension(1, 'left', -1), tension(1, 'right', -1), { kind: 'chain.hook', chain: 0, hooked: false }, { kind: 'chain.hook', chain: 1, hooked: false }, remove('saddle')], // prettier-ignore
    ({ to, before }) => {
      expect(before('saddle').id).toBe('saddle');
      expect(to.chains).toHaveLength(0);
      expect(to.items.some((i) => ['saddle', 'isolationValve', 'rodBarrel', 'rod'].includes(i.id))).toBe(
        false,
      );
    },
  ],
  [
    'pulled with a wrench the keeper goes further in',
    [{ kind: 'keeper.pull', torqueNm: 110, holdBack: true }],
    ({ before, after }) => {
      expect(after('keeperPlug-1').position[2]).toBeLessThan(before('keeperPlug-1').position[2]);
      expect(after('keeperPlug-1').turns).toBeGreaterThan(before('keeperPlug-1').turns);
    },
  ],
  [
    'the bond is clamped across the cut',
    [
      { kind: 'bond.clamp', end: 'tee', clamped: true },
      { kind: 'bond.clamp', end: 'service', clamped: true },
    ],
    ({ from, to }) => expect(to.cables.length - from.cables.length).toBe(1),
  ],
  [
    'sawn through, the service stays in the ground and a stub on the tee',
    [{ kind: 'branch.cut', part: 'through' }],
    ({ before, after, to }) => {
      expect(before('serviceLine').spec.variant).toBe('whole');
      expect(after('serviceLine').spec.variant).toBe('cut');
      expect(to.items.some((i) => i.id === 'serviceStub')).toBe(true);
    },
  ],
  [
    'the tee is sawn flush and then dressed',
    [
      { kind: 'tee.trim', how: 'saw' },
      { kind: 'tee.trim', how: 'dress' },
    ],
    ({ before, after, to }) => {
      expect(before('serviceTee').spec.variant).toBe('whole');
      expect(after('serviceTee').spec.variant).toBe('dressed');
      expect(to.items.some((i) => i.id === 'serviceStub')).toBe(false);
    },
  ],
  ['the dead end is capped', [place('serviceCap-1')], appears('serviceCap-1', g.portAxisZM)],
  [
    'an eighth of a turn on the tee takes keeper and stopper with it',
    [{ kind: 'tee.turn', turns: -0.125, holdBack: true }],
    all(
      rises('serviceTee', pitch / 8, -0.125),
      rises('keeperPlug-1', pitch / 8, -0.125),
      rises('boreStopper-1', pitch / 8),
    ),
  ],
  [
    'snugged, gasket and collar go round the coupling',
    [{ kind: 'tee.turn', turns: 0.125, holdBack: true }, remove('seatRing-1'), place('cupGasket-1'), place('splitCollar-1')], // prettier-ignore
    all(appears('cupGasket-1', g.couplingTopZM), appears('splitCollar-1', 0), goes('seatRing-1')),
  ],
  [
    'bolts drawn up squeeze the gasket',
    [
      { kind: 'collarBolt.turn', bolt: 0, turns: 2 },
      { kind: 'collarBolt.turn', bolt: 1, turns: 2 },
    ],
    ({ before, after }) => {
      expect(before('cupGasket-1').spec.squeeze).toBe(0);
      expect(after('cupGasket-1').spec.squeeze).toBe(1);
    },
  ],
  [
    'the left bolt of the collar turns by itself, and then the right one',
    [{ kind: 'collarBolt.turn', bolt: 0, turns: 0.25 }],
    all(opens('splitCollar-1', 'leftBoltTurns', 0.25), opens('splitCollar-1', 'rightBoltTurns', 0)),
  ],
  [
    'as far as the left',
    [{ kind: 'collarBolt.turn', bolt: 1, turns: 0.25 }],
    all(opens('splitCollar-1', 'leftBoltTurns', 0), opens('splitCollar-1', 'rightBoltTurns', 0.25)),
  ],
  ['the saddle takes its second seat, lower', [place('saddle')], appears('saddle', g.secondSeatZM)],
  ['the lower spool stands on the saddle', [place('lowerSpool')], appears('lowerSpool', secondTop())],
  ['the valve on it', [place('isolationValve')], appears('isolationValve', secondTop(0.1))],
  ['the upper spool on the valve', [place('upperSpool')], appears('upperSpool', secondTop(0.1, 0.19))],
  [
    'the barrel on the spool',
    [fit('socket-1'), place('rodBarrel')],
    appears('rodBarrel', secondTop(0.1, 0.19, 0.15)),
  ],
  [
    'five turns on the keeper raise the whole tee five pitches',
    [valve(quarter), hold, rodDown(0.5), rodTurn(-5)],
    all(
      rises('serviceTee', 5 * pitch, -5),
      rises('keeperPlug-1', 5 * pitch),
      rises('boreStopper-1', 5 * pitch),
    ),
  ],
  [
    'free, it is lifted on the rod with its stopper in it',
    [rodTurn(-3), rodDown(-0.3)],
    ({ before, after }) => {
      const by = after('serviceTee').position[2] - before('serviceTee').position[2];
      expect(by).toBeGreaterThan(0.3);
      expect(after('boreStopper-1').position[2] - before('boreStopper-1').position[2]).toBeCloseTo(by, 3);
      expect(after('keeperPlug-1').position[2]).toBeCloseTo(after('socket-1').position[2], 4);
    },
  ],
  [
    'and leaves with barrel and spool',
    [rodDown(-0.2), valve(-quarter), remove('rodBarrel'), load(null), remove('upperSpool')],
    all(goes('serviceTee'), goes('upperSpool'), goes('keeperPlug-1'), goes('boreStopper-1')),
  ],
  [
    'the closing plug goes down to the coupling',
    [load('closingPlug-1'), place('rodBarrel'), valve(quarter), hold, rodDown(0.5)],
    appears('closingPlug-1', g.closingShoulderZM + taperThreads['1'].madeUpM),
  ],
  [
    'turned in, it sinks a pitch a turn',
    [rodTurn(-0.3), rodTurn(4.5)],
    ({ before, after }) => {
      const turned = after('closingPlug-1').turns - before('closingPlug-1').turns;
      expect(turned).toBeGreaterThan(4);
      expect(after('closingPlug-1').position[2]).toBeLessThan(
        before('closingPlug-1').position[2] - 4 * pitch,
      );
    },
  ],
  ['and stays when the rod leaves', [rodDown(-0.3)], all(rises('closingPlug-1', 0), rises('rod', 0.3))],
];

group('what a hand does is seen where it happens', () => {
  let rig = setUp(job);
  it.each(rows)('%s', (_says, actions, check) => {
    const from = describe(rig);
    const next = doing(rig, ...actions);
    const to = describe(next);
    rig = next;
    check({ from, to, before: item(from), after: item(to) });
    const tip = to.items.find((i) => i.kind === 'socket' || i.kind === 'stopperHolder');
    if (tip) expect(tip.position[2], "the picture's tip is the rig's tip").toBeCloseTo(tipZM(rig) ?? NaN, 9);
  });
});
